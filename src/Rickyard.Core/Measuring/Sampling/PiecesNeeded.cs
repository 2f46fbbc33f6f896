using MathNet.Numerics.Distributions;

namespace Rickyard.Core.Measuring.Sampling;

/// <summary>How many pieces to read so that their mean is known well enough, by Student's t (physics.md, Q7).</summary>
public static class PiecesNeeded
{
    /// <summary>The least number of pieces, two or more, whose mean lies within the half width of the mean of all.</summary>
    /// <param name="sd">Standard deviation between pieces, not negative.</param>
    /// <param name="halfWidth">How far the mean may be off, above 0, in the unit of <paramref name="sd"/>.</param>
    /// <param name="confidence">How sure, two-sided, above 0 and below 1.</param>
    public static int For(double sd, double halfWidth, double confidence)
    {
        if (!(halfWidth > 0)) throw new ArgumentOutOfRangeException(nameof(halfWidth), halfWidth, "The half width must be above 0.");
        CheckSpread(sd, confidence);
        // t falls as pieces are added, so the half width does too: step out by doubling, then halve.
        int low = 1, high = 2;
        while (HalfWidth(sd, high, confidence) > halfWidth)
        {
            if (high > int.MaxValue / 2) throw new ArgumentOutOfRangeException(nameof(halfWidth), halfWidth, "No countable number of pieces is enough.");
            (low, high) = (high, 2 * high);
        }

        while (high - low > 1)
        {
            var middle = low + (high - low) / 2;
            if (HalfWidth(sd, middle, confidence) > halfWidth) low = middle;
            else high = middle;
        }

        return high;
    }

    /// <summary>How far the mean of some pieces may lie from the mean of all, in the unit of the standard deviation.</summary>
    /// <param name="sd">Standard deviation between pieces, not negative.</param>
    /// <param name="pieces">Two or more.</param>
    /// <param name="confidence">How sure, two-sided, above 0 and below 1.</param>
    public static double HalfWidth(double sd, int pieces, double confidence)
    {
        CheckSpread(sd, confidence);
        return Factor(pieces, confidence) * sd / Math.Sqrt(pieces);
    }

    /// <summary>Student's t, two-sided, for the mean of some pieces.</summary>
    /// <param name="pieces">Two or more.</param>
    /// <param name="confidence">Above 0 and below 1.</param>
    public static double Factor(int pieces, double confidence) => pieces >= 2
        ? StudentT.InvCDF(0, 1, pieces - 1, (1 + confidence) / 2)
        : throw new ArgumentOutOfRangeException(nameof(pieces), pieces, "A spread needs two pieces or more.");

    private static void CheckSpread(double sd, double confidence)
    {
        if (!(sd >= 0 && double.IsFinite(sd))) throw new ArgumentOutOfRangeException(nameof(sd), sd, "The standard deviation must be finite and not negative.");
        if (!(confidence > 0 && confidence < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "The confidence must be above 0 and below 1.");
    }
}
