using MathNet.Numerics.Distributions;

namespace Rickyard.Testing.Learning;

/// <summary>
/// Ranks of truths among as many draws of the posterior: flat if the inference is right (Talts, Betancourt, Simpson, Vehtari and Gelman 2018, arXiv:1804.06788, from memory).
/// </summary>
/// <param name="Name">Of what.</param>
/// <param name="Ranks">One for each lot, 0 to <paramref name="Draws"/>.</param>
/// <param name="Draws">Draws ranked among.</param>
public sealed record RankHistogram(string Name, IReadOnlyList<int> Ranks, int Draws)
{
    private const int Bins = 10;

    /// <summary>How many ranks fall in each tenth.</summary>
    public int[] Counts()
    {
        var counts = new int[Bins];
        foreach (var rank in Ranks) counts[Math.Min(Bins - 1, rank * Bins / (Draws + 1))]++;
        return counts;
    }

    /// <summary>Chance of a histogram at least as uneven, if it were flat (chi-squared).</summary>
    public double Chance()
    {
        var expected = Ranks.Count / (double)Bins;
        var squares = Counts().Sum(count => (count - expected) * (count - expected) / expected);
        return 1 - ChiSquared.CDF(Bins - 1, squares);
    }

    /// <summary>Rank of a truth among draws.</summary>
    public static int Rank(IEnumerable<double> draws, double truth) => draws.Count(draw => draw < truth);
}
