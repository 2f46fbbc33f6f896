namespace Rickyard.Testing.Learning;

/// <summary>Holds what is learnt from synthetic lots against what is true of them: ranks, coverage, sharpness.</summary>
public static class HonestyStudy
{
    private const int RankedAmong = 100;

    /// <summary>Look at some lots after none, some and all of their looks.</summary>
    /// <param name="lots">Maker of lots.</param>
    /// <param name="count">How many.</param>
    /// <param name="stages">Numbers of looks after which a forecast is made; the last is also ranked.</param>
    /// <param name="looked">Told after each lot; may be null.</param>
    public static HonestyReport Run(SyntheticLots lots, int count, IReadOnlyList<int> stages, Action? looked = null)
    {
        var outcomes = new LotOutcome[count];
        Parallel.For(0, count, number =>
        {
            var lot = lots.Make(number);
            outcomes[number] = Outcome(lots, lot, [.. stages.Select(looks => lots.Learn(lot, looks, number + 1))]);
            looked?.Invoke();
        });
        return new([.. Enumerable.Range(0, outcomes[0].Ranks.Length).Select(i => new RankHistogram(outcomes[0].Names[i], [.. outcomes.Select(one => one.Ranks[i])], RankedAmong))],
            [.. stages.Select((looks, i) => new StageScore(looks, outcomes.Count(one => one.Inside[i]), count, outcomes.Average(one => one.Scores[i]), outcomes.Average(one => one.LotScores[i])))]);
    }

    /// <summary>A forecast's marks at the end of the run: core of an unseen split and of the middle one.</summary>
    private static LotOutcome Outcome(SyntheticLots lots, SyntheticLot lot, LearntLot[] learnt)
    {
        var (all, last, mid) = (learnt[^1], lot.Days.Length - 1, Array.FindIndex(lot.Days, day => day >= StudyPlan.LastLook));
        List<(string Name, int Rank)> ranks =
        [
            .. lots.Unknowns.Select((name, k) => (name, Rank([.. all.Unknowns.Select(draw => draw[k])], lot.Unknowns[k]))),
            ("Meter", Rank(all.Meter, lot.Meter)),
            ("Middle core today", Rank(At(all.MiddleCore, mid), lot.MiddleCore[mid])), ("Middle core at the end", Rank(At(all.MiddleCore, last), lot.MiddleCore[last])),
            ("Unseen core today", Rank(At(all.OtherCore, mid), lot.OtherCore[mid])), ("Unseen core at the end", Rank(At(all.OtherCore, last), lot.OtherCore[last])),
        ];
        return new(
            [.. ranks.Select(one => one.Name)], [.. ranks.Select(one => one.Rank)],
            [.. learnt.Select(stage => IsInside(At(stage.OtherCore, last), lot.OtherCore[last]))],
            [.. learnt.Select(stage => Crps.Of(At(stage.OtherCore, last), lot.OtherCore[last]))],
            [.. learnt.Select(stage => Crps.Of(At(stage.MiddleCore, last), lot.MiddleCore[last]))]);
    }

    private static double[] At(double[][] draws, int report) => [.. draws.Select(draw => draw[report])];

    // Draws follow one another in a chain; every so many are as good as independent.
    private static int Rank(double[] draws, double truth) => RankHistogram.Rank(draws.Where((_, i) => i % (draws.Length / RankedAmong) == 0), truth);

    private static bool IsInside(double[] draws, double truth)
    {
        double[] sorted = [.. draws.Order()];
        return truth >= sorted[sorted.Length / 20] && truth <= sorted[sorted.Length * 19 / 20];
    }

    private sealed record LotOutcome(string[] Names, int[] Ranks, bool[] Inside, double[] Scores, double[] LotScores);
}
