namespace Rickyard.Core.Splits;

/// <summary>The log's own directions, in the order of the grid's indices.</summary>
public enum Axis
{
    /// <summary>From pith to bark (in a block: across its width).</summary>
    Radial,

    /// <summary>Round the pith (in a block: across its height).</summary>
    Tangential,

    /// <summary>Along the grain.</summary>
    Longitudinal,
}
