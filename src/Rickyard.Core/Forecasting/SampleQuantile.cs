namespace Rickyard.Core.Forecasting;

/// <summary>Quantiles of members.</summary>
internal static class SampleQuantile
{
    /// <summary>Of sorted values, the members at the middle of their slices, straight between them (Hyndman and Fan 1996, type 5).</summary>
    internal static double At(double[] sorted, double quantile)
    {
        var position = Math.Clamp(quantile * sorted.Length - 0.5, 0, sorted.Length - 1);
        var below = (int)position;
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] == sorted[above] ? sorted[below] : sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }
}
