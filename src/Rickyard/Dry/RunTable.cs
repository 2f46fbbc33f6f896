using Rickyard.Core.Drying;
using static System.FormattableString;

namespace Rickyard.Dry;

/// <summary>The run in about ten rows, first and last report among them, and the core as one line of bars.</summary>
internal static class RunTable
{
    private const int Rows = 10;
    private const int Bars = 40;
    private const string Levels = "▁▂▃▄▅▆▇█";

    public static IReadOnlyList<string> Heads(DryingRun run) => new RunClock(run).IsDated
        ? ["day", "date", "mean", "core", "core, 8 in 10", "shell", "end", "mass kg"]
        : ["day", "mean", "core", "core, 8 in 10", "shell", "end", "mass kg"];

    public static IEnumerable<IReadOnlyList<string>> Of(DryingRun run)
    {
        var clock = new RunClock(run);
        var last = run.Days.Length - 1;
        var reports = Enumerable.Range(0, Rows).Select(row => (int)Math.Round((double)row * last / (Rows - 1))).Distinct();
        return reports.Select(report => Row(run, report, clock));
    }

    /// <summary>The core from start to end as bars of equal time, tallest at its wettest.</summary>
    public static string Spark(DryingRun run)
    {
        var values = Enumerable.Range(0, Bars).Select(bar => Curve.At(run.Days, run.Typical.Core, run.Days[^1] * bar / (Bars - 1))).ToList();
        var top = Math.Max(values.Max(), 1e-9);
        return string.Concat(values.Select(value => Levels[(int)Math.Clamp(value / top * (Levels.Length - 1), 0, Levels.Length - 1)]));
    }

    private static IReadOnlyList<string> Row(DryingRun run, int report, RunClock clock)
    {
        var series = run.Typical;
        var day = run.Days[report];
        var band = $"{Say.Percent(run.LowTenth.Core[report])}–{Say.Percent(run.HighTenth.Core[report])}";
        return
        [
            clock.DayNumber(day), .. clock.Iso(day) is { } date ? new[] { date } : [], Say.Percent(series.Mean[report]), Say.Percent(series.Core[report]), band,
            Say.Percent(series.Shell[report]), Say.Percent(series.End[report]), Invariant($"{series.MassKilograms[report]:0.00}"),
        ];
    }
}
