namespace Rickyard.Core.Measuring.Ovens;

/// <summary>What wood is dried in to constant mass.</summary>
public enum Appliance
{
    /// <summary>An oven with a thermostat.</summary>
    Oven,

    /// <summary>A microwave oven.</summary>
    Microwave,
}
