using Rickyard.Core.Drying;
using Rickyard.Core.Learning;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>What is inside today, and how many splits are in the band.</summary>
internal static class TodaySentences
{
    private const double LargeGap = 0.06;
    private const double Hardly = 0.01;

    public static string Inside(LearningRun run)
    {
        string Of(Func<MoistureSeries, double[]> part) =>
            $"{Percent(run, part(run.Median))} ({Percent(run, part(run.LowTenth))} to {Percent(run, part(run.HighTenth))})";
        var gap = At(run, run.Median.Core) - At(run, run.Median.Shell);
        var mislead = gap > LargeGap ? Invariant($" The shell is {100 * gap:0} points drier than the core: pins on the outside will mislead, so split one open.") : "";
        return $"Inside today, {new RunClock(run.Case, run.Days[^1]).Say(run.Today)}, in % dry basis with the 8-in-10 range: core {Of(series => series.Core)}, whole piece {Of(series => series.Mean)}, shell {Of(series => series.Shell)}, end grain {Of(series => series.End)}.{mislead}";
    }

    public static string? Share(LearningRun run)
    {
        if (run.Case.Pieces is null or 1) return null;
        double At(Func<Spread, double> part) => Curve.At(run.Days, [.. run.ShareInBand.Select(part)], run.Today);
        var (low, middle, high) = (At(share => share.Low), At(share => share.Middle), At(share => share.High));
        return $"Of its splits {Say.Share(middle)} have their core in {Say.Band(run.Window)} today (8 chances in 10: {Say.Share(low)} to {Say.Share(high)}). {Best(run)}";
    }

    private static string Best(LearningRun run)
    {
        var ahead = Enumerable.Range(0, run.Days.Length).Where(report => run.Days[report] >= run.Today).ToList();
        var best = ahead.MaxBy(report => run.ShareInBand[report].Middle);
        if (run.ShareInBand[best].Middle < Hardly) return "Within this run there is no day on which many are.";
        return run.ShareInBand[best].Middle <= Curve.At(run.Days, [.. run.ShareInBand.Select(share => share.Middle)], run.Today) + Hardly
            ? "There will hardly be more."
            : $"Most are on {new RunClock(run.Case, run.Days[^1]).Say(run.Days[best])}: {Say.Share(run.ShareInBand[best].Middle)} ({Say.Share(run.ShareInBand[best].Low)} to {Say.Share(run.ShareInBand[best].High)}).";
    }

    private static double At(LearningRun run, double[] values) => Curve.At(run.Days, values, run.Today);

    private static string Percent(LearningRun run, double[] values) => Say.Percent(At(run, values));
}
