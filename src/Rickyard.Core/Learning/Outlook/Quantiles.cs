using Rickyard.Core.Forecasting;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Quantiles of draws.</summary>
internal static class Quantiles
{
    /// <summary>p10, p50, p90.</summary>
    internal static Spread Of(double[] draws) => Of(draws, 0.1, 0.9);

    /// <summary>Two quantiles and the middle.</summary>
    internal static Spread Of(double[] draws, double low, double high)
    {
        double[] sorted = [.. draws.Order()];
        return new(SampleQuantile.At(sorted, low), SampleQuantile.At(sorted, 0.5), SampleQuantile.At(sorted, high));
    }

    /// <summary>Of draws with weights.</summary>
    internal static Spread Of(double[] draws, double[] weights, double low, double high)
    {
        var order = Enumerable.Range(0, draws.Length).OrderBy(i => draws[i]).ToArray();
        var total = weights.Sum();
        double At(double quantile)
        {
            double sum = 0;
            foreach (var i in order)
                if ((sum += weights[i]) >= quantile * total) return draws[i];
            return draws[order[^1]];
        }

        return new(At(low), At(0.5), At(high));
    }
}
