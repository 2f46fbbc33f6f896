namespace Rickyard.Core.Learning.Inference;

/// <summary>How well several chains agree on a number, and how many independent draws they are worth (Gelman and others 2013, Bayesian Data Analysis, 11.4 and 11.5, from memory).</summary>
internal static class ChainHealth
{
    /// <summary>Split R-hat: spread of half chains about each other over their own; 1 when they agree.</summary>
    internal static double SplitRHat(IReadOnlyList<double[]> chains)
    {
        var (within, whole, _) = Variances(Halves(chains));
        return within > 0 ? Math.Sqrt(whole / within) : 1;
    }

    /// <summary>Effective number of independent draws.</summary>
    internal static double EffectiveDraws(IReadOnlyList<double[]> chains)
    {
        var halves = Halves(chains);
        var (_, whole, length) = Variances(halves);
        var draws = halves.Count * length;
        if (whole <= 0) return draws;
        double sum = 0;
        for (var lag = 1; lag + 1 < length; lag += 2)
        {
            var pair = Correlation(halves, lag, whole) + Correlation(halves, lag + 1, whole);
            if (pair < 0) break;
            sum += pair;
        }

        return Math.Min(draws, draws / (1 + 2 * sum));
    }

    private static double Correlation(List<double[]> chains, int lag, double whole) =>
        1 - chains.Average(chain => Enumerable.Range(lag, chain.Length - lag).Average(i => Math.Pow(chain[i] - chain[i - lag], 2))) / (2 * whole);

    private static List<double[]> Halves(IReadOnlyList<double[]> chains) =>
        [.. chains.SelectMany(chain => new[] { chain[..(chain.Length / 2)], chain[(chain.Length / 2)..(chain.Length / 2 * 2)] })];

    private static (double Within, double Whole, int Length) Variances(List<double[]> chains)
    {
        var length = chains[0].Length;
        double[] means = [.. chains.Select(chain => chain.Average())];
        var within = chains.Average(chain => chain.Sum(one => Math.Pow(one - chain.Average(), 2)) / (length - 1));
        var between = means.Sum(mean => Math.Pow(mean - means.Average(), 2)) / (means.Length - 1);
        return (within, (length - 1.0) / length * within + between, length);
    }
}
