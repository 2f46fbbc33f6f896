namespace Rickyard.Core.Boxes.Changes;

/// <summary>One thing that could be changed in a charge or its box.</summary>
public enum BoxChange
{
    /// <summary>Half as much heater power again.</summary>
    StrongerHeater,

    /// <summary>Walls that let half as much heat through.</summary>
    BetterWalls,

    /// <summary>A vent of twice the size.</summary>
    LargerVent,

    /// <summary>Air twice as fast at the wood.</summary>
    FasterFan,

    /// <summary>Splits laid so that air reaches all their faces.</summary>
    LooserPacking,

    /// <summary>A setting 6 K higher, where the limit allows it.</summary>
    Warmer,

    /// <summary>Every split cut in two, seven tenths as wide.</summary>
    FinerSplits,

    /// <summary>Half as many splits.</summary>
    HalfTheCharge,
}
