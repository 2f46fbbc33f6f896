using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Wood;

namespace Rickyard.Dry;

/// <summary>What becomes of the wood if nothing is done: the moisture its air heads for, and whether that is in the band.</summary>
internal static class WaitingSentence
{
    private const double TailDays = 30;

    public static string Of(DryingRun run) => Of(run.Case, run.Days, run.AirEquilibrium, run.Window);

    /// <summary>The same from the parts of a run.</summary>
    public static string Of(DryingCase drying, double[] days, double[] airEquilibrium, ReadyWindow window)
    {
        if (drying.Periods is [.., RestPeriod]) return "If nothing is done: closed up in its own vapour it evens out but keeps its water.";
        var tail = Math.Min(TailDays, days[^1] / 2);
        var air = TailMean(days, airEquilibrium, tail);
        if (!double.IsFinite(air)) return "If nothing is done: the air at the end of the run is not known well enough to say where the wood would come to rest.";
        var rest = air * EquilibriumMoisture.DesorptionFactor;
        var clock = new RunClock(drying, days[^1]);
        return $"If nothing is done: the air of the last {(tail >= 2 ? $"{tail:0} days" : "part of the run")} heads for {Say.Moisture(air)}, where wood that dries stops near {Say.Moisture(rest)}; {Outcome(window, air, rest, clock)}";
    }

    private static string Outcome(ReadyWindow window, double air, double rest, RunClock clock)
    {
        if (air > window.BandHigh) return $"that is wetter than {Say.Band(window)}, so in this air waiting alone never brings it there.";
        if (rest >= window.BandLow) return $"that is in or close to {Say.Band(window)}, so it may stay there long.";
        return window.Until.Middle is { } until
            ? $"so it goes on past the band and from {clock.Say(until)} is drier than {Say.Band(window)}: use it before, or move it into moister air."
            : $"so it goes on through {Say.Band(window)} and in time becomes drier than that.";
    }

    private static double TailMean(double[] days, double[] airEquilibrium, double tail)
    {
        var reports = Enumerable.Range(0, days.Length).Where(report => days[report] > days[^1] - tail && double.IsFinite(airEquilibrium[report])).ToList();
        return reports.Count > 0 ? reports.Average(report => airEquilibrium[report]) : double.NaN;
    }
}
