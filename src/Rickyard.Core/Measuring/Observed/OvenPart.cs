namespace Rickyard.Core.Measuring.Observed;

/// <summary>What part of a piece went into the oven.</summary>
public enum OvenPart
{
    /// <summary>All of it.</summary>
    Whole,

    /// <summary>A full cross-section from mid-length.</summary>
    Section,

    /// <summary>A bit from the core.</summary>
    Core,
}
