using System.Diagnostics;

namespace Rickyard.Benchmarks;

/// <summary>Times work after it has run warm.</summary>
internal static class Timing
{
    private const int WarmMilliseconds = 1500;

    /// <summary>Median time. [s]</summary>
    internal static double Median(int repeats, Action work)
    {
        for (var warm = Stopwatch.StartNew(); warm.ElapsedMilliseconds < WarmMilliseconds;) work();
        var times = new double[repeats];
        for (var i = 0; i < repeats; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            times[i] = watch.Elapsed.TotalSeconds;
        }

        Array.Sort(times);
        return times[repeats / 2];
    }
}
