using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.StandIns;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class StandInTests
{
    private const int Members = 128;
    private static readonly IReadOnlyList<EngineOutput> Outputs = [new(1, Sensor.Core), new(2, Sensor.Core), new(2, Sensor.Mean)];

    [Fact]
    public void Linear_answers_are_reproduced()
    {
        var standIn = StandInFit.Of(Sample(numbers => 1 + 0.5 * numbers[0] - 0.2 * numbers[1], _ => 0), Outputs, [0], hasWeather: false);
        Assert.Equal(1 + 0.5 * 0.7 - 0.2 * -1.1, Ask(standIn, 0, [0.7, -1.1, 0.3]), 1e-6);
    }

    [Fact]
    public void Smooth_answers_are_met_within_a_few_of_the_stated_errors()
    {
        static double Truth(double[] numbers) => Math.Log(0.2 + 0.4 * Math.Exp(-Math.Exp(0.4 * numbers[0] + 0.2 * numbers[1])));
        var standIn = StandInFit.Of(Sample(Truth, _ => 0), Outputs, [0], hasWeather: false);
        var points = Points(200, 9);
        var error = Math.Sqrt(points.Average(point => Math.Pow(Ask(standIn, 0, point) - Truth(point), 2)));
        Assert.True(error < 0.01, $"error {error}");
        Assert.InRange(error, 0.2 * standIn.Errors[0], 3 * standIn.Errors[0]);
    }

    [Fact]
    public void What_groups_share_is_put_down_to_weather_with_its_variance()
    {
        var random = new Xoshiro256StarStar(3);
        double[] shared = [.. Enumerable.Range(0, Members / 4).Select(_ => 0.1 * Normal.Sample(random, 0, 1))];
        var standIn = StandInFit.Of(Sample(numbers => 0.3 * numbers[0], group => shared[group]), Outputs, [0, 1, 2], hasWeather: true);
        var deviation = Math.Sqrt(standIn.Weather.Weights[0].Sum(weight => weight * weight) + standIn.Weather.LeftOver[0] * standIn.Weather.LeftOver[0]);
        // Standard error of a standard deviation from 32 groups: 12 %; three of them.
        Assert.InRange(deviation, 0.064, 0.136);
    }

    [Fact]
    public void Vectorised_kernel_is_that_of_the_plain_formula()
    {
        var sample = Sample(numbers => numbers[0], _ => 0);
        double[] scale = [0.5, 0.3, 0.1], at = [0.2, -0.4, 1.7];
        double[][] points = [.. scale.Select((one, k) => sample.Numbers.Select(numbers => numbers[k] * one).ToArray())];
        var standIn = new StandIn(points, scale, [[0, 0, 0, 0]], [new double[Members]], new([[]], [0]), [0]);
        var kernel = new double[Members];
        standIn.Feel(at, kernel);
        for (var member = 0; member < Members; member++)
        {
            var squares = Enumerable.Range(0, 3).Sum(k => Math.Pow((sample.Numbers[member][k] - at[k]) * scale[k], 2));
            Assert.Equal(Math.Exp(-0.5 * squares), kernel[member], 1e-12);
        }
    }

    private static double Ask(StandIn standIn, int output, double[] numbers)
    {
        var kernel = new double[standIn.Members];
        standIn.Feel(numbers, kernel);
        return standIn.Log(output, numbers, kernel);
    }

    private static EngineSample Sample(Func<double[], double> answer, Func<int, double> shared)
    {
        var numbers = Points(Members, 1);
        return new(numbers, [.. Outputs.Select((_, output) => numbers.Select((one, member) => (1 + output) * (answer(one) + shared(member / 4))).ToArray())], 4);
    }

    private static double[][] Points(int count, int seed)
    {
        var random = new Xoshiro256StarStar(seed);
        return [.. Enumerable.Range(0, count).Select(_ => Enumerable.Range(0, 3).Select(_ => Normal.Sample(random, 0, 1)).ToArray())];
    }
}
