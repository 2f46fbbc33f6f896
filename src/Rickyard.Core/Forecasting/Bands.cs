using Rickyard.Core.Drying;

namespace Rickyard.Core.Forecasting;

/// <summary>Quantiles over the members, time by time.</summary>
internal static class Bands
{
    /// <summary>One track as a series.</summary>
    internal static MoistureSeries Series(Track track) => new(track.Mean, track.Core, track.Shell, track.End, track.Celsius, track.Mass, track.Loss);

    /// <summary>A tenth, half and nine tenths of every quantity at every time, each on its own.</summary>
    internal static (MoistureSeries LowTenth, MoistureSeries Median, MoistureSeries HighTenth) Of(Track[] tracks)
    {
        var parts = new[] { Each(tracks, t => t.Mean), Each(tracks, t => t.Core), Each(tracks, t => t.Shell), Each(tracks, t => t.End), Each(tracks, t => t.Celsius), Each(tracks, t => t.Mass), Each(tracks, t => t.Loss) };
        MoistureSeries Series(int quantile) => new(
            parts[0][quantile], parts[1][quantile], parts[2][quantile], parts[3][quantile], parts[4][quantile], parts[5][quantile], parts[6][quantile]);
        return (Series(0), Series(1), Series(2));
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

    private static double[][] Each(Track[] tracks, Func<Track, double[]> values)
    {
        var reports = tracks[0].Mean.Length;
        var (bands, sorted) = (new[] { new double[reports], new double[reports], new double[reports] }, new double[tracks.Length]);
        for (var report = 0; report < reports; report++)
        {
            for (var i = 0; i < sorted.Length; i++) sorted[i] = values(tracks[i])[report];
            Array.Sort(sorted);
            (bands[0][report], bands[1][report], bands[2][report]) = (SampleQuantile.At(sorted, 0.1), SampleQuantile.At(sorted, 0.5), SampleQuantile.At(sorted, 0.9));
        }

        return bands;
    }
}
