using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>
/// Finds how to run a charge: settings of temperature and humidity, each run once on a coarse grid with the whole charge, and from each of them pulls at several
/// means, each followed by a closed rest (docs/physics.md, section B). The one chosen is run again on the usual grid, pulls and all, with its bands.
/// </summary>
public static class ScheduleSearch
{
    /// <summary>Coarse, for choosing: within a point of the usual grid (docs/physics.md, B14).</summary>
    internal static GridResolution Coarse { get; } = new(7, 5, 5, 0.002, 2.6);

    /// <summary>Gaps within this count as alike, so that the lesser energy decides. [kg kg⁻¹]</summary>
    private const double AlikeGap = 0.005;

    private const int FewMembers = 16;

    /// <summary>Search.</summary>
    /// <param name="drying">A case whose only period is a box; its stages are replaced by those tried.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="weather">The weather the case names.</param>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the search; the best so far is then the answer.</param>
    /// <exception cref="OperationCanceledException">Stopped before anything had been tried.</exception>
    public static Result<ScheduleAnswer> Run(
        DryingCase drying, ScheduleRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        if (ScheduleProblems.Of(drying, request) is { Count: > 0 } problems) return ResultOf.Failure<ScheduleAnswer>(problems);
        var plan = ((BoxPeriod)drying.Periods[0]).Plan;
        var outside = ChargeForecast.OutsideOf(drying with { Days = request.LatestDays }, plan, weather, []);
        var goal = new GoalMeasure(request.Goal, request.BandLow, request.BandHigh);
        var bench = new TrialBench(plan, ChargeForecast.ClassesOf(drying), outside, goal, request.LatestDays);
        var tried = bench.TryAll(BoxSettings.For(plan.Box, request.HighestCelsius), progress, cancellation);
        var best = Best(tried.Candidates, goal, request.LatestDays);
        var meets = best.Miss <= goal.Tolerance && best.Classes.All(one => one.PullDay is not null);
        var stopped = cancellation.IsCancellationRequested;
        var run = ScheduleRun.Of(drying, plan, best, request with { Members = stopped ? Math.Min(FewMembers, request.Members) : request.Members }, weather);
        var chosen = ScheduleRun.AsRun(best, run);
        return ResultOf.Success(new ScheduleAnswer
        {
            Case = drying,
            Request = request,
            Best = chosen,
            MeetsGoal = meets,
            TradeOff = [.. Front(tried.Candidates, best, goal).Select(one => ReferenceEquals(one, best) ? chosen : one)],
            Tried = tried.Candidates,
            Cures = meets || stopped ? [] : new CureSearch(bench, best).All(),
            Run = run,
            Notes = ScheduleNotes.Of(plan, goal, tried, best),
            WasStopped = stopped,
        });
    }

    private static ScheduleCandidate Best(IReadOnlyList<ScheduleCandidate> tried, GoalMeasure goal, double latest)
    {
        var able = tried.Where(one => one.Miss <= goal.Tolerance && one.Classes.All(c => c.PullDay is not null) && one.Days <= latest + 1e-6).ToList();
        if (able.Count == 0) return tried.MinBy(one => (Math.Round(one.Miss, 3), one.Classes.Sum(c => goal.Miss(c.Core, c.Mean, c.Shell))))!;
        var least = able.Min(one => one.Gap);
        return able.Where(one => one.Gap <= least + AlikeGap).MinBy(one => one.EnergyJoules)!;
    }

    /// <summary>
    /// Those that none beats in days, energy and gap at once, near twins left out: with every class's core (for even wood: its mean) where it is wanted, or as near to that as the best.
    /// </summary>
    private static List<ScheduleCandidate> Front(IReadOnlyList<ScheduleCandidate> tried, ScheduleCandidate best, GoalMeasure goal)
    {
        List<ScheduleCandidate> front = [best];
        foreach (var one in tried.Where(one => IsWorthShowing(one, best, goal)).OrderBy(one => one.Days).ThenBy(one => one.EnergyJoules))
        {
            if (front.Any(kept => Beats(kept, one))) continue;
            front.RemoveAll(kept => !ReferenceEquals(kept, best) && Beats(one, kept));
            front.Add(one);
        }

        return [.. front.OrderBy(one => one.Days).ThenBy(one => one.EnergyJoules)];
    }

    private static bool IsWorthShowing(ScheduleCandidate one, ScheduleCandidate best, GoalMeasure goal) => goal.Goal == ChargeGoal.UsableNow
        ? one.Miss <= Math.Max(goal.Tolerance, best.Miss + goal.Tolerance / 2)
        : one.Classes.All(pull => pull.PullDay is not null && goal.Beyond(pull.Mean) <= goal.Tolerance) || one.Miss <= best.Miss + goal.Tolerance / 2;

    /// <summary>Not worse by more than nobody would notice: a twentieth of a day or a fiftieth, 3 % of the energy, half a point of gap.</summary>
    private static bool Beats(ScheduleCandidate other, ScheduleCandidate one) =>
        other.Days <= one.Days + Math.Max(0.05, 0.02 * one.Days) && other.EnergyJoules <= 1.03 * one.EnergyJoules && other.Gap <= one.Gap + AlikeGap;
}
