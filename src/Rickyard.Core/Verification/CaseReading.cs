namespace Rickyard.Core.Verification;

/// <summary>What of a run is set beside the measured value.</summary>
public enum CaseReading
{
    /// <summary>Part of the start mass lost by a day. [percentage points]</summary>
    Loss,

    /// <summary>Mean moisture on a day, dry basis. [percentage points]</summary>
    Mean,

    /// <summary>Days until the mean is 20 % dry basis. [d]</summary>
    DaysToTwenty,

    /// <summary>Days to 20 % of this case over those of another. [–]</summary>
    Ratio,

    /// <summary>Time constant of an exponential fall towards equilibrium. [d]</summary>
    TimeConstant,

    /// <summary>Time to warm through over the printed time. [–]</summary>
    Heating,
}
