using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>How far wood is from what it was dried for.</summary>
internal sealed record GoalMeasure(ChargeGoal Goal, double BandLow, double BandHigh)
{
    /// <summary>
    /// A typical split this near counts as there: half a point for a core that is to be in the band; for even wood one point, the tolerance within a piece that
    /// lumber practice asks (Wengert 1992, Techniques for Equalizing and Conditioning Lumber). [kg kg⁻¹]
    /// </summary>
    internal double Tolerance => Goal == ChargeGoal.UsableNow ? 0.005 : 0.01;

    /// <summary>Middle of the band. [kg kg⁻¹]</summary>
    internal double Middle => (BandLow + BandHigh) / 2;

    /// <summary>Distance of the core, and for even wood of mean and shell too, from the band. [kg kg⁻¹]</summary>
    internal double Miss(double core, double mean, double shell) =>
        Goal == ChargeGoal.UsableNow ? Beyond(core) : Math.Max(Beyond(core), Math.Max(Beyond(mean), Beyond(shell)));

    /// <summary>The same of readings.</summary>
    internal double Miss(in SplitReading reading) => Miss(reading.Core, reading.Mean, reading.Shell);

    /// <summary>Distance of one moisture from the band. [kg kg⁻¹]</summary>
    internal double Beyond(double moisture) => Math.Max(0, Math.Max(moisture - BandHigh, BandLow - moisture));
}
