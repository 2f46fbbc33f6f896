namespace Rickyard.Core.Boxes;

/// <summary>What holds the drying back most.</summary>
public enum BoxLimit
{
    /// <summary>The heater cannot hold the temperature asked for.</summary>
    Heater,

    /// <summary>The air is near its fill of vapour: the vent is too small.</summary>
    Vapor,

    /// <summary>The air does not reach the faces: fan, packing.</summary>
    Surface,

    /// <summary>Water moves too slowly inside the wood.</summary>
    Inside,

    /// <summary>Nothing: closed up to even out, or in balance with its air.</summary>
    None,
}
