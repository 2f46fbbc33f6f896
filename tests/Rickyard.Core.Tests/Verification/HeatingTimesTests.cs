using Rickyard.Core.Verification;
using Xunit;

namespace Rickyard.Core.Tests.Verification;

/// <summary>Wood Handbook FPL-GTR-190 Table 20-4, all 60 rows; the air speed is not printed, so 1 to 3 m/s are tried.</summary>
public sealed class HeatingTimesTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Sixty_published_heating_times_are_met_at_air_speeds_a_kiln_has(double speed)
    {
        var times = HeatingTimes.Run(speed);
        Assert.Equal(60, times.Count);
        Assert.InRange(MedianMiss(times.Where(t => t.Depression == 0)), 0, 0.12);
        Assert.InRange(MedianMiss(times.Where(t => t.Depression > 0)), 0, 0.20);
        Assert.All(times, time => Assert.InRange(Math.Abs(time.RelativeMiss), 0, 0.40));
    }

    private static double MedianMiss(IEnumerable<HeatingTime> times)
    {
        var misses = times.Select(time => Math.Abs(time.RelativeMiss)).Order().ToArray();
        return (misses[(misses.Length - 1) / 2] + misses[misses.Length / 2]) / 2;
    }
}
