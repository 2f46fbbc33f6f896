namespace Rickyard.Core.Measuring;

/// <summary>Where the pins of a meter were put into a piece.</summary>
public enum PinPlace
{
    /// <summary>Into the end grain, pins along the grain.</summary>
    EndGrain,

    /// <summary>Into the round of the log: through the bark where there is some, at mid-length.</summary>
    Side,

    /// <summary>Into a weathered split face at mid-length.</summary>
    SplitFace,

    /// <summary>Into the middle of a face just split or sawn open.</summary>
    FreshCore,
}
