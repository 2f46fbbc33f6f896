using Rickyard.Core.Learning.StandIns;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class WeatherModesTests
{
    [Fact]
    public void Weather_of_two_patterns_needs_two_modes_and_leaves_nothing()
    {
        double[] first = [1, -1, 1, -1], second = [0.5, 0.5, -0.5, -0.5];
        double[][] effects = [first, second, [.. first.Zip(second, (a, b) => a - 2 * b)]];
        var modes = WeatherModes.Of(effects, [0, 1, 2]);
        Assert.Equal(2, modes.Count);
        for (var output = 0; output < effects.Length; output++)
        {
            Assert.Equal(effects[output].Average(one => one * one), modes.Weights[output].Sum(weight => weight * weight), 1e-10);
            Assert.Equal(0, modes.LeftOver[output], 1e-6);
        }
    }

    [Fact]
    public void No_weather_no_modes() => Assert.Equal(0, WeatherModes.Of([[0, 0, 0], [0, 0, 0]], [0, 1]).Count);
}
