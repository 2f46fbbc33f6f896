namespace Rickyard.Core.Racks;

/// <summary>What keeps rain off a rack.</summary>
public enum RackCover
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A roof or sheet over the top only; sides open.</summary>
    Top,

    /// <summary>A tarpaulin over top and sides.</summary>
    Tarp,

    /// <summary>A roofed shed with open or slatted front.</summary>
    Shed,
}
