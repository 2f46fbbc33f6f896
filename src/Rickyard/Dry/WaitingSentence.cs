using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Wood;

namespace Rickyard.Dry;

/// <summary>What becomes of the wood if nothing is done: the moisture its air heads for, and whether that is in the band.</summary>
internal static class WaitingSentence
{
    private const double TailDays = 30;

    public static string Of(DryingRun run)
    {
        if (run.Case.Periods is [.., RestPeriod]) return "If nothing is done: closed up in its own vapour it evens out but keeps its water.";
        var tail = Math.Min(TailDays, run.Days[^1] / 2);
        var air = TailMean(run, tail);
        if (!double.IsFinite(air)) return "If nothing is done: the air at the end of the run is not known well enough to say where the wood would come to rest.";
        var rest = air * EquilibriumMoisture.DesorptionFactor;
        var clock = new RunClock(run);
        return $"If nothing is done: the air of the last {(tail >= 2 ? $"{tail:0} days" : "part of the run")} heads for {Say.Moisture(air)}, where wood that dries stops near {Say.Moisture(rest)}; {Outcome(run.Window, air, rest, clock)}";
    }

    private static string Outcome(ReadyWindow window, double air, double rest, RunClock clock)
    {
        if (air > window.BandHigh) return $"that is wetter than {Say.Band(window)}, so in this air waiting alone never brings it there.";
        if (rest >= window.BandLow) return $"that is in or close to {Say.Band(window)}, so it may stay there long.";
        return window.Until.Middle is { } until
            ? $"so it goes on past the band and from {clock.Say(until)} is drier than {Say.Band(window)}: use it before, or move it into moister air."
            : $"so it goes on through {Say.Band(window)} and in time becomes drier than that.";
    }

    private static double TailMean(DryingRun run, double tail)
    {
        var reports = Enumerable.Range(0, run.Days.Length).Where(report => run.Days[report] > run.Days[^1] - tail && double.IsFinite(run.AirEquilibrium[report])).ToList();
        return reports.Count > 0 ? reports.Average(report => run.AirEquilibrium[report]) : double.NaN;
    }
}
