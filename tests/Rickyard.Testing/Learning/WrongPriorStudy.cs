namespace Rickyard.Testing.Learning;

/// <summary>Lots that are unlike their prior: wood twice and a half standard deviations slow and one and a half wetter at the start. Do readings bring the forecast round?</summary>
public static class WrongPriorStudy
{
    private static readonly Dictionary<string, double> Unlike = new() { ["Rate"] = -2.5, ["Start"] = 1.5 };

    /// <summary>Error of the middle forecast of the middle split's core at the end, by number of looks.</summary>
    /// <param name="lots">Maker of lots.</param>
    /// <param name="count">How many.</param>
    /// <param name="stages">Numbers of looks.</param>
    public static IReadOnlyList<WrongPriorScore> Run(SyntheticLots lots, int count, IReadOnlyList<int> stages)
    {
        var scores = new (double Error, bool Inside)[count][];
        Parallel.For(0, count, number =>
        {
            var lot = lots.Make(10_000 + number, Unlike);
            scores[number] = [.. stages.Select(looks => Score(lots.Learn(lot, looks, number + 1), lot))];
        });
        return [.. stages.Select((looks, i) => new WrongPriorScore(looks, scores.Average(one => one[i].Error), scores.Count(one => one[i].Inside), count))];
    }

    private static (double Error, bool Inside) Score(LearntLot learnt, SyntheticLot lot)
    {
        double[] cores = [.. learnt.MiddleCore.Select(core => core[^1]).Order()];
        var truth = lot.MiddleCore[^1];
        return (Math.Abs(cores[cores.Length / 2] - truth), truth >= cores[cores.Length / 20] && truth <= cores[cores.Length * 19 / 20]);
    }
}
