using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>The answer in its first sentence: when the core is in the band, with its spread.</summary>
internal static class ReadySentence
{
    private const string Odds = "8 chances in 10";

    public static string Of(DryingRun run)
    {
        var clock = new RunClock(run);
        if (run.Typical.Core[0] < run.Window.BandLow) return TooDry(run, clock);
        if (run.Window.From.Middle is not { } from) return NotReady(run, clock);
        return $"The core is in {Say.Band(run.Window)} {From(run, from, clock)} {Until(run, clock)}.{Chance(run.Window)}";
    }

    private static string From(DryingRun run, double from, RunClock clock) => from <= run.Days[0]
        ? "from the start"
        : $"from {clock.Say(from)} ({Odds}: {clock.Between(run.Window.From.Early, run.Window.From.Late)})";

    private static string Until(DryingRun run, RunClock clock) => run.Window.Until.Middle is { } until
        ? $"until {clock.Say(until)} ({Odds}: {clock.Between(run.Window.Until.Early, run.Window.Until.Late)}); after that it is drier"
        : $"and still is when the run ends on {clock.Say(clock.End)}";

    private static string Chance(ReadyWindow window) =>
        window.ChanceReady > 0.995 ? "" : $" The chance that it gets there within the run is {Say.Share(window.ChanceReady)}.";

    private static string NotReady(DryingRun run, RunClock clock)
    {
        var end = $"{Say.Moisture(run.Typical.Core[^1])} ({Odds}: {Say.Percent(run.LowTenth.Core[^1])} to {Say.Percent(run.HighTenth.Core[^1])} % dry basis)";
        return $"The core is not in {Say.Band(run.Window)} within these {clock.DayNumber(clock.End)} days: on {clock.Say(clock.End)} it is still at {end}. "
            + $"The chance that it gets there sooner is {Say.Share(run.Window.ChanceReady)}.";
    }

    private static string TooDry(DryingRun run, RunClock clock)
    {
        var start = $"The core starts at {Say.Moisture(run.Typical.Core[0])}, drier than {Say.Band(run.Window)}";
        var back = Array.FindIndex(run.Typical.Core, core => core >= run.Window.BandLow);
        return back >= 0
            ? $"{start}, and gains water: it is back in the band from {clock.Say(run.Days[back])}."
            : $"{start}, and on {clock.Say(clock.End)} is at {Say.Moisture(run.Typical.Core[^1])} ({Odds}: {Say.Percent(run.LowTenth.Core[^1])} to {Say.Percent(run.HighTenth.Core[^1])} % dry basis).";
    }
}
