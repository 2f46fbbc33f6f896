namespace Rickyard.Core.Boxes;

/// <summary>A stretch of a schedule.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Days">How long; null for to the end of the run. [d]</param>
/// <param name="Celsius">What the thermostat is set to; null for heater off. [°C]</param>
/// <param name="Vent">How the vent stands; null for as the box's own.</param>
public sealed record BoxStage(StageKind Kind, double? Days, double? Celsius, BoxVent? Vent = null);
