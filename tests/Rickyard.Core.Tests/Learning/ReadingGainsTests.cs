using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.Outlook;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class ReadingGainsTests
{
    private const int Draws = 2000;
    private static readonly double[] Days = Normals(1, 20);

    [Fact]
    public void Reading_that_has_nothing_to_do_with_the_day_gains_next_to_nothing()
    {
        var gain = ReadingGains.Of([Choice(Normals(2, 1))], Days)[0];
        // Slices of 125 draws: the width of an 80 % range is known to about 8 % there, and sixteen are averaged.
        Assert.InRange(gain.DaysGained, 0, 0.06 * gain.DaysNow);
    }

    [Fact]
    public void Reading_as_sharp_as_the_day_is_spread_gains_what_normal_theory_says()
    {
        // Day N(0, 20²) and a reading of it with an error of 20: the day is then known to 20/√2 (textbook result).
        var noise = Normals(3, 20);
        var gain = ReadingGains.Of([Choice([.. Days.Zip(noise, (day, error) => day + error)])], Days)[0];
        Assert.InRange(gain.DaysAfter / gain.DaysNow, 1 / Math.Sqrt(2) - 0.05, 1 / Math.Sqrt(2) + 0.08);
    }

    [Fact]
    public void Best_comes_first()
    {
        var gains = ReadingGains.Of([Choice(Normals(2, 1)), Choice(Days)], Days);
        Assert.True(gains[0].DaysGained > gains[1].DaysGained);
        Assert.True(gains[0].DaysAfter < 0.2 * gains[0].DaysNow);
    }

    private static ReadingChoice Choice(double[] values) => new("look", null, "", false, values);

    private static double[] Normals(int seed, double deviation)
    {
        var random = new Xoshiro256StarStar(seed);
        return [.. Enumerable.Range(0, Draws).Select(_ => deviation * Normal.Sample(random, 0, 1))];
    }
}
