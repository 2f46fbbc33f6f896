namespace Rickyard.Core.Boxes.Schedules;

/// <summary>Mean moistures at which classes may be pulled: what a search varies besides the setting of the box.</summary>
internal static class PullLevels
{
    private const int Levels = 12;

    /// <summary>
    /// From well below the band up. Wood pulled with its mean in the band can only end even there; wood whose core is to be in the band sooner is pulled drier, since its
    /// shell is then dry already.
    /// </summary>
    internal static IReadOnlyList<double> For(GoalMeasure goal)
    {
        double low = 0.4 * goal.BandLow, high = goal.BandHigh + 0.01;
        return [.. Enumerable.Range(0, Levels).Select(i => low + (high - low) * i / (Levels - 1))];
    }
}
