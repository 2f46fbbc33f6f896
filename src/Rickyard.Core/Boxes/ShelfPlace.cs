namespace Rickyard.Core.Boxes;

/// <summary>Where in the stream of circulated air a class lies.</summary>
public enum ShelfPlace
{
    /// <summary>First after the heater.</summary>
    Warm,

    /// <summary>Mean of the box, where the thermostat feels.</summary>
    Middle,

    /// <summary>Last before the air returns.</summary>
    Cool,
}
