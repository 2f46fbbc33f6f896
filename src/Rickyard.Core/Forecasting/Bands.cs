using Rickyard.Core.Drying;

namespace Rickyard.Core.Forecasting;

/// <summary>Quantiles over the members, time by time.</summary>
internal static class Bands
{
    /// <summary>One track as a series.</summary>
    internal static MoistureSeries Series(Track track) => new(track.Mean, track.Core, track.Shell, track.End, track.Celsius, track.Mass, track.Loss);

    /// <summary>A quantile of every quantity at every time, each on its own.</summary>
    internal static MoistureSeries Of(Track[] tracks, double quantile)
    {
        double[] Each(Func<Track, double[]> values) => [.. Enumerable.Range(0, tracks[0].Mean.Length)
            .Select(report => Quantile([.. tracks.Select(track => values(track)[report])], quantile))];
        return new(Each(t => t.Mean), Each(t => t.Core), Each(t => t.Shell), Each(t => t.End), Each(t => t.Celsius), Each(t => t.Mass), Each(t => t.Loss));
    }

    /// <summary>When the members' cores come into the band and fall out of it.</summary>
    internal static ReadyWindow Window(double[] days, Track[] tracks, double low, double high)
    {
        var from = tracks.Select(track => FirstAtOrBelow(days, track.Core, high, 0)).ToArray();
        var until = tracks.Select((track, i) => from[i] < double.PositiveInfinity ? FirstAtOrBelow(days, track.Core, low, from[i]) : double.PositiveInfinity).ToArray();
        return new(low, high, Spread(from), Spread(until), from.Count(day => day < double.PositiveInfinity) / (double)tracks.Length) { FirstDays = [.. from.Order()] };
    }

    private static DaySpread Spread(double[] days)
    {
        double? At(double quantile) => Quantile([.. days], quantile) is var day && day < double.PositiveInfinity ? day : null;
        return new(At(0.1), At(0.5), At(0.9));
    }

    /// <summary>First time from <paramref name="after"/> on at which a falling series is at or below a level, straight between reports; infinity if never.</summary>
    internal static double FirstAtOrBelow(double[] days, double[] values, double level, double after)
    {
        for (var i = 0; i < days.Length; i++)
        {
            if (values[i] > level || days[i] < after) continue;
            if (i == 0 || values[i - 1] <= level) return Math.Max(days[i], after);
            return Math.Max(after, days[i - 1] + (days[i] - days[i - 1]) * (values[i - 1] - level) / (values[i - 1] - values[i]));
        }

        return double.PositiveInfinity;
    }

    private static double Quantile(double[] values, double quantile)
    {
        Array.Sort(values);
        return SampleQuantile.At(values, quantile);
    }
}
