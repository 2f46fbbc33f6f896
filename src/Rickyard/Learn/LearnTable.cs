using Rickyard.Core.Learning;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>The forecast in about ten rows from today on, the day of today and the last report among them.</summary>
internal static class LearnTable
{
    private const int Rows = 9;

    public static IReadOnlyList<string> Heads(LearningRun run) =>
        [run.Case.Start.IsDated ? "date" : "day", "core", "core, 8 in 10", "whole", "shell", "end", .. run.Case.Pieces > 1 ? new[] { "in band" } : []];

    public static IEnumerable<IReadOnlyList<string>> Of(LearningRun run)
    {
        var first = Math.Max(0, Array.FindIndex(run.Days, day => day >= run.Today));
        var last = run.Days.Length - 1;
        return Enumerable.Range(0, Rows).Select(row => (int)Math.Round(first + (double)row * (last - first) / (Rows - 1))).Distinct().Select(report => Row(run, report));
    }

    private static IReadOnlyList<string> Row(LearningRun run, int report)
    {
        var clock = new RunClock(run.Case, run.Days[^1]);
        var (series, day) = (run.Median, run.Days[report]);
        return
        [
            clock.Iso(day) ?? clock.DayNumber(day), Say.Percent(series.Core[report]), $"{Say.Percent(run.LowTenth.Core[report])}–{Say.Percent(run.HighTenth.Core[report])}",
            Say.Percent(series.Mean[report]), Say.Percent(series.Shell[report]), Say.Percent(series.End[report]),
            .. run.Case.Pieces > 1 ? new[] { Say.Share(run.ShareInBand[report].Middle) } : [],
        ];
    }
}
