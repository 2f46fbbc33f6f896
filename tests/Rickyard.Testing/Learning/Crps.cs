namespace Rickyard.Testing.Learning;

/// <summary>Continuous ranked probability score of draws: how far a forecast lies from what came, its spread counted too; the smaller the better (Gneiting and Raftery 2007, J. Am. Stat. Assoc. 102: 359, from memory).</summary>
public static class Crps
{
    /// <summary>Score, in the unit of the draws: mean distance to the truth less half the mean distance between draws.</summary>
    public static double Of(double[] draws, double truth)
    {
        double[] sorted = [.. draws.Order()];
        double apart = 0;
        for (var i = 0; i < sorted.Length; i++) apart += (2.0 * i - sorted.Length + 1) * sorted[i];
        return sorted.Average(draw => Math.Abs(draw - truth)) - apart / ((double)sorted.Length * sorted.Length);
    }
}
