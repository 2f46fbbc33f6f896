using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class AirSeriesTests
{
    private const double Activation = 5280;

    private static readonly Gen<(double Seconds, Surroundings Air)> AnySpan = Gen.Select(
        Gen.Double[60, 7200],
        Gen.Select(Gen.Double[250, 360], Gen.Double[50, 3000], Gen.Double[2, 30], Gen.Double[-40, 300], Gen.Double[0, 1e-3], Gen.Double[0, 1e-3], Gen.Double[1e-4, 1])
            .Select((kelvins, vapor, convection, sun, sides, ends, fresh) => new Surroundings(kelvins, vapor, convection, sun, sides, ends, fresh)));

    private static readonly Gen<(double Seconds, Surroundings Air)[]> AnySpans = AnySpan.Array[1, 30];

    // running sums over up to 30 spans against adding up the parts of the spans within the step
    [Fact]
    public void Mean_is_the_sum_of_the_parts() => Gen.Select(AnySpans, Gen.Double[0, 1], Gen.Double[0.001, 1.5]).Sample((spans, from, length) =>
    {
        var series = new AirSeries(spans);
        double time = from * series.End, step = length * series.End;
        var mean = series.Mean(time, step);
        double Of(Func<Surroundings, double> value) => PartsIn(spans, time, step).Sum(part => part.Seconds * value(part.Air)) / step;

        var kelvins = Of(air => air.TemperatureKelvins);
        Assert.Equal(kelvins, mean.Kelvins, 1e-7);
        Near(Of(air => air.VaporPressure), mean.VaporPressure);
        Near(Of(air => SaturationPressure.Of(air.TemperatureKelvins)) / SaturationPressure.Of(kelvins), mean.SaturationGain);
        Near(Of(air => Math.Exp(-Activation / air.TemperatureKelvins)) / Math.Exp(-Activation / kelvins), mean.MobilityGain);
        Near(Of(air => air.ConvectiveCoefficient), mean.ConvectiveCoefficient);
        Assert.Equal(Of(air => air.AbsorbedRadiation), mean.AbsorbedRadiation, 1e-6);
        Near(Of(air => air.RainOnSides), mean.RainOnSides);
        Near(Of(air => air.RainOnEnds), mean.RainOnEnds);
        Near(1 / Of(air => 1 / air.FreshAir), mean.FreshAir);
    });

    // both are convex in temperature over these ranges, so means over varying air exceed the values at its mean
    [Fact]
    public void Gains_are_never_below_one() => Gen.Select(AnySpans, Gen.Double[0, 1], Gen.Double[0.001, 1]).Sample((spans, from, length) =>
    {
        var series = new AirSeries(spans);
        var mean = series.Mean(from * series.End, length * series.End);
        return mean.SaturationGain >= 1 - 1e-9 && mean.MobilityGain >= 1 - 1e-9;
    });

    [Fact]
    public void Air_after_the_last_span_is_the_last()
    {
        var series = new AirSeries([(3600, new(280, 800, 5)), (3600, new(290, 900, 6))]);
        var late = series.Mean(1e6, 7200);
        Assert.Equal(290, late.Kelvins, 1e-7);
        Assert.Equal(900, late.VaporPressure, 1e-6);
        Assert.Equal(double.PositiveInfinity, late.FreshAir);
    }

    [Fact]
    public void Sealed_air_stays_sealed() => Assert.InRange(AirSeries.Steady(new(300, 2000, 5, FreshAir: 0)).Mean(0, 3600).FreshAir, 0, 1.001e-9);

    [Fact]
    public void A_series_needs_air() => Assert.Throws<ArgumentException>(() => new AirSeries([]));

    private static IEnumerable<(double Seconds, Surroundings Air)> PartsIn((double Seconds, Surroundings Air)[] spans, double time, double step)
    {
        double start = 0;
        for (var i = 0; i < spans.Length; i++)
        {
            var end = i == spans.Length - 1 ? double.PositiveInfinity : start + spans[i].Seconds;
            var part = Math.Min(end, time + step) - Math.Max(start, time);
            if (part > 0) yield return (part, spans[i].Air);
            start = end;
        }
    }

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-7 * expected + 1e-15);
}
