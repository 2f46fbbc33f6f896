namespace Rickyard.Core.Measuring.Profiles;

/// <summary>How a drying piece is thought of where its profile is taken for a parabola.</summary>
public enum ProfileShape
{
    /// <summary>A board that dries through its two wide faces.</summary>
    Slab,

    /// <summary>A round, along its diameter.</summary>
    Round,

    /// <summary>A square bar (product of two parabolas), along the middle of a face.</summary>
    Square,

    /// <summary>A sphere, or a short block that dries on all sides: the bound.</summary>
    Block,
}
