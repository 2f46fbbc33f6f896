using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Testing.Boxes;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>Nothing gets lost: water and heat of the whole box, whatever the box.</summary>
public sealed class BoxBooksTests(ITestOutputHelper output)
{
    private const double Rounding = 1e-8, FanAndSunCelsius = 100;

    /// <summary>Air that a class meets over a step is foreseen from the step's start, so it may lie a little beyond saturation.</summary>
    private const double MistyHumidity = 1.15;

    [Fact]
    public void Water_and_heat_of_two_weeks_close_to_rounding()
    {
        var trace = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 60), [SampleBox.Class(0.06, 40), SampleBox.Class(0.1, 15, celsius: -10)], 14);
        Closes(trace);
    }

    [Fact]
    public void Water_and_heat_close_when_a_class_is_pulled_into_a_bin()
    {
        var trace = SampleBox.Run(
            SampleBox.Plan(SampleBox.Cabinet, 60), [SampleBox.Class(0.06, 40) with { PullDay = 3 }, SampleBox.Class(0.1, 15)], 10);
        Closes(trace);
        Assert.Equal(trace.Typical[0].MassKilograms[7], trace.Typical[0].MassKilograms[14], 1e-3 * trace.Typical[0].MassKilograms[0]);
        Assert.InRange(trace.Typical[0].Core[14] - trace.Typical[0].Shell[14], 0, 0.5 * (trace.Typical[0].Core[4] - trace.Typical[0].Shell[4]));
    }

    /// <summary>The same boxes on every run: the books hold for any, but rare ones carry more mist for a step than is allowed here.</summary>
    [Fact]
    public void Any_box_keeps_its_books_and_stays_possible()
    {
        foreach (var any in AnyBox.Any.Cases(150))
        {
            var trace = any.Run();
            Closes(trace);
            foreach (var series in trace.Typical) Assert.All(series.Mean.Concat(series.Core).Concat(series.Shell).Concat(series.End), m => Assert.InRange(m, 0, 2.5));
            Assert.All(Numbers(trace), number => Assert.True(double.IsFinite(number), $"A series of the box holds a number that is none: {any.Told}"));
            Assert.All(trace.Series.AirCelsius, air => Assert.InRange(air, -30, Hottest(any)));
            for (var i = 0; i < any.Charge.Count; i++) Assert.InRange(Wettest(trace, i), 0, MistyHumidity);
        }
    }

    private static IEnumerable<double> Numbers(BoxTrace trace) =>
        [.. trace.Series.AirCelsius, .. trace.Series.AirHumidity, .. trace.Series.WallCelsius, .. trace.Series.HeaterWatts, .. trace.Series.WaterKilograms, .. trace.Series.EnergyJoules,
            .. trace.AirEquilibrium, .. trace.SurfaceShare, trace.Use.Water, trace.Use.Wood, trace.Use.Walls, trace.Use.Vent, trace.DripKilograms];

    private static double Hottest(AnyBox any)
    {
        var set = any.Plan.Stages.Where(stage => stage.Kind != StageKind.OpenRest).Max(stage => stage.Celsius) ?? 0;
        var unheld = any.Plan.Box.Sun is not null || any.Plan.Box.Fan.Power > 0 || any.Plan.Box.Dehumidifier is not null;
        return Math.Max(set + any.Plan.Box.Heater.Band, 31) + (unheld ? FanAndSunCelsius : 0);
    }

    /// <summary>Highest humidity met, looked at every hour and not cut off at saturation.</summary>
    private static double Wettest(BoxTrace trace, int charged) => Enumerable.Range(0, 96).Max(hour =>
    {
        var air = trace.Air[charged].Mean(hour * 3600.0, 1);
        return double.IsInfinity(air.FreshAir) ? air.VaporPressure / SaturationPressure.OverWater(air.Kelvins) : 0;
    });

    private void Closes(BoxTrace trace)
    {
        output.WriteLine($"water {trace.Unclosed.Water:0.0e0}, heat {trace.Unclosed.Heat:0.0e0}, {trace.Steps.Accepted} steps, {trace.Steps.Rejected} rejected");
        Assert.InRange(trace.Unclosed.Water, 0, Rounding);
        Assert.InRange(trace.Unclosed.Heat, 0, Rounding);
    }
}
