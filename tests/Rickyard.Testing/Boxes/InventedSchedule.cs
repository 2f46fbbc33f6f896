using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;

namespace Rickyard.Testing.Boxes;

/// <summary>Schedules that no search found, for the invented charge: the warmer and the drier pulled, the sooner and the larger the gap.</summary>
public static class InventedSchedule
{
    private static readonly double[] Loaded = [1.10, 2.24, 4.40];

    /// <summary>An answer.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="meets">Whether it can be done; else the largest class is not in time, and cures are told.</param>
    /// <param name="plan">The box, or null for the usual invented one.</param>
    public static ScheduleAnswer Of(ScheduleRequest request, bool meets = true, BoxPlan? plan = null)
    {
        var run = InventedCharge.Run(plan);
        var tried = Enumerable.Range(0, 60).Select(i => Candidate(70 - 8 * (i % 5), 0.08 + 0.01 * (i / 5), meets)).ToList();
        var front = tried.Where(one => one.PullMean is > 0.10 and < 0.195).OrderBy(one => one.Days).Where((_, i) => i % 4 == 0).ToList();
        var best = request.Goal == ChargeGoal.Even ? front.MinBy(one => one.Gap)! : front[1];
        return new()
        {
            Case = run.Case,
            Request = request,
            Best = best,
            MeetsGoal = meets,
            TradeOff = front,
            Tried = tried,
            Cures = meets ? [] : [new(CureKind.MoreDays, request.LatestDays, 14.5), new(CureKind.FinerSplits, 0.09, 0.063), new(CureKind.FewerPieces, 72, null), new(CureKind.DrierStart, 0.38, 0.29)],
            Run = run with { Members = request.Members, Seed = request.Seed },
            Notes = ["An invented schedule: no search found it."],
            Seconds = 0.1,
        };
    }

    private static ScheduleCandidate Candidate(double celsius, double mean, bool meets)
    {
        var slow = Math.Pow(1.05, 70 - celsius);
        var classes = Enumerable.Range(0, 3).Select(i => Pull(i, slow * (i + 1) * Math.Log(0.33 / (mean - 0.03)), mean, i < 2 || meets)).ToList();
        var days = classes.Max(one => (one.PullDay ?? 0) + one.RestDays);
        return new(celsius, celsius < 60 ? 0.5 : null, mean, celsius, classes, days, 3.6e6 * (4 + 0.11 * (celsius - 15) * days), 24, classes.Max(one => one.Gap), meets ? 0.002 : 0.041);
    }

    private static ClassPull Pull(int number, double day, double mean, bool inTime)
    {
        var spread = 0.02 + 0.35 * (mean - 0.06);
        var rest = 12 * (mean - 0.08) * (number + 1);
        double Mass(double moisture) => Loaded[number] / 1.35 * (1 + moisture);
        return new(number, inTime ? day : null, rest, mean, mean + 1.6 * spread, mean - spread, Mass(mean), Loaded[number], mean, mean + 0.9 * spread / (1 + rest), mean - 0.9 * spread / (1 + rest));
    }
}
