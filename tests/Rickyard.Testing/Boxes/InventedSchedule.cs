using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;

namespace Rickyard.Testing.Boxes;

/// <summary>Schedules that no search found, for the invented charge: the warmer the sooner, the longer the rest the smaller the gap.</summary>
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
        var evened = Enumerable.Range(0, 60).Select(i => Candidate(70 - 8 * (i % 5), 0.19, 0.2 + 0.12 * (i / 5), meets));
        var tried = Enumerable.Range(0, 5).Select(i => Candidate(70 - 8 * i, 0.12, 0, meets)).Concat(evened).ToList();
        var front = tried.Skip(request.Goal == ChargeGoal.Even ? 5 : 0).Where((one, i) => i % 3 == 0 && one.Days < 16).OrderBy(one => one.Days).ToList();
        var best = request.Goal == ChargeGoal.Even ? front.Where(one => one.Days <= request.LatestDays).MinBy(one => one.Gap)! : front.First(one => one.PullMean < 0.13);
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

    private static ScheduleCandidate Candidate(double celsius, double mean, double rest, bool meets)
    {
        var slow = Math.Pow(1.04, 70 - celsius);
        var classes = Enumerable.Range(0, 3).Select(i => Pull(i, slow, mean, rest, i < 2 || meets)).ToList();
        var days = classes.Max(one => (one.PullDay ?? 0) + one.RestDays);
        return new(celsius, celsius < 60 ? 0.5 : null, mean, celsius, classes, days, 3.6e6 * (4 + 0.13 * (celsius - 15) * days), 24, classes.Max(one => one.Gap), meets ? 0.002 : 0.041);
    }

    private static ClassPull Pull(int number, double slow, double mean, double rest, bool inTime)
    {
        var (day, evened) = (slow * (number + 1) * Math.Log(0.33 / (mean - 0.03)), Math.Exp(-1.6 * rest));
        double Mass(double moisture) => Loaded[number] / 1.35 * (1 + moisture);
        return new(number, inTime ? day : null, slow * rest * (number + 2), mean, mean + 0.07, mean - 0.06, Mass(mean), Loaded[number], mean, mean + 0.07 * evened, mean - 0.06 * evened);
    }
}
