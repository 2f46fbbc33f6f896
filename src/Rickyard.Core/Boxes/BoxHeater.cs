namespace Rickyard.Core.Boxes;

/// <summary>What heats a box; a box without one has a power of 0.</summary>
/// <param name="Power">Most heat it gives to the box. [W]</param>
/// <param name="Band">Thermostat band, centred on the setting: full power at its lower edge, none at its upper. [K]</param>
/// <param name="RadiantShare">Part of the heat that shines on what stands round it instead of warming the air, 0 to 0.8; a small charge catches only part of it.</param>
/// <param name="Fuel">What it burns or draws.</param>
/// <param name="Efficiency">Heat given to the box over energy bought, 0.3 to 1.</param>
public sealed record BoxHeater(double Power, double Band, double RadiantShare, HeaterFuel Fuel, double Efficiency);
