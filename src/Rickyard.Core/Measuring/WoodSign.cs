namespace Rickyard.Core.Measuring;

/// <summary>Coarse signs of moisture that need no instrument.</summary>
public enum WoodSign
{
    /// <summary>Heavy in the hand for its size.</summary>
    Heavy,

    /// <summary>Checks (cracks along the rays) in the end grain.</summary>
    Checks,

    /// <summary>Bark loose or falling off.</summary>
    BarkLoose,

    /// <summary>Water or foam at the ends when a piece is put on a fire.</summary>
    BubblingEnds,

    /// <summary>Two pieces knocked together ring rather than thud.</summary>
    Rings,
}
