using Rickyard.Core.Measuring;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>What of a piece the engine is asked for, with the pins where it is a pin reading.</summary>
internal sealed record Sensor(SensorKind Kind, Pins? Pins = null)
{
    internal static Sensor Mean { get; } = new(SensorKind.Mean);

    internal static Sensor Core { get; } = new(SensorKind.Core);

    internal static Sensor Shell { get; } = new(SensorKind.Shell);

    internal static Sensor End { get; } = new(SensorKind.End);

    internal static Sensor Mass { get; } = new(SensorKind.Mass);

    internal static Sensor DryMass { get; } = new(SensorKind.DryMass);

    internal static Sensor Section { get; } = new(SensorKind.Section);

    internal static Sensor OfPins(Pins pins) => new(SensorKind.Pins, pins);
}
