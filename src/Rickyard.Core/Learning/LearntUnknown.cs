namespace Rickyard.Core.Learning;

/// <summary>Something about the lot that the case could not say, before and after the readings.</summary>
/// <param name="Name">What, in words: "start moisture".</param>
/// <param name="Unit">Unit of the numbers: "% dry basis", "× the usual", "points".</param>
/// <param name="Before">From the case alone.</param>
/// <param name="After">With the readings.</param>
public sealed record LearntUnknown(string Name, string Unit, Spread Before, Spread After)
{
    /// <summary>Part of the spread that the readings took away, 0 to 1.</summary>
    public double Learnt => Before.High > Before.Low ? Math.Max(0, 1 - (After.High - After.Low) / (Before.High - Before.Low)) : 0;
}
