using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Core.Wood;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>A box shut tight: the wood comes to rest with its own vapour, or drips it off at cold walls.</summary>
public sealed class ClosedBoxTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(StageKind.ClosedRest, 0)]
    [InlineData(StageKind.Drying, 0)]
    [InlineData(StageKind.ClosedRest, 0.5)]
    [InlineData(StageKind.Drying, 5)]
    public void Sealed_box_ends_at_the_balance_of_its_own_vapor_and_stops(StageKind kind, double conductance)
    {
        var box = SampleBox.Cabinet.Shut() with { WallConductance = conductance, Fan = new(0.5, 0, 0) };
        var trace = SampleBox.Run(SampleBox.Plan(box, 65, kind, 20), [SampleBox.Class(0.02, 30, 0.25)], 120, 60);
        // Wood that radiates to colder walls is colder than the air; its own balance is at its own temperature.
        double mean = trace.Typical[0].Mean[^1], celsius = trace.Typical[0].CoreCelsius[^1], balance = SorptionIsotherm.At(celsius).Moisture(Vapor(trace, 60) / Saturation(celsius));
        double late = trace.Series.WaterKilograms[^1] - trace.Series.WaterKilograms[^2];
        output.WriteLine($"mean {mean:P2}, balance {balance:P2}, humidity {trace.Series.AirHumidity[^1]:P1}, drip {trace.DripKilograms:0.00} kg, last two days {late:0.0e0} kg, wall {trace.Series.WallCelsius[^1]:0.00}, air {trace.Series.AirCelsius[^1]:0.00}, wood {celsius:0.00} °C");
        Assert.Equal(balance, mean, 0.002);
        Assert.InRange(Math.Abs(late), 0, 2e-4 * trace.Series.WaterKilograms[^1] + 1e-6);
    }

    [Fact]
    public void Cold_walls_drip_and_dry_the_charge_of_a_shut_box()
    {
        var box = SampleBox.Cabinet.Shut() with { WallConductance = 6 };
        var trace = SampleBox.Run(SampleBox.Plan(box, 55, outsideCelsius: -10), [SampleBox.Class(0.06, 60)], 10, 40);
        output.WriteLine($"drip {trace.DripKilograms:0.0} of {trace.Series.WaterKilograms[^1]:0.0} kg; steps {trace.Steps}");
        Assert.InRange(trace.DripKilograms, 0.9 * trace.Series.WaterKilograms[^1], trace.Series.WaterKilograms[^1]);
        Assert.All(Enumerable.Range(4, 36), i => Assert.InRange(Vapor(trace, i), Saturation(trace.Series.WallCelsius[i]), 0.98 * Saturation(trace.Series.AirCelsius[i])));
    }

    [Fact]
    public void Walls_under_dew_warm_smoothly()
    {
        var box = SampleBox.Cabinet.Shut() with { WallConductance = 6 };
        var trace = SampleBox.Run(SampleBox.Plan(box, 55, outsideCelsius: -10), [SampleBox.Class(0.1, 60)], 4, 96);
        var walls = trace.Series.WallCelsius;
        output.WriteLine(string.Join(" ", walls.Select(w => w.ToString("0.0"))));
        Assert.All(Enumerable.Range(50, 46), i => Assert.InRange(Math.Abs(walls[i] - 2 * walls[i - 1] + walls[i - 2]), 0, 0.3));
    }

    [Fact]
    public void Frozen_wood_takes_dew_from_warm_humid_air()
    {
        var box = SampleBox.Cabinet.Shut();
        var trace = SampleBox.Run(SampleBox.Plan(box, 40, StageKind.ClosedRest, 30, 0.8), [SampleBox.Class(0.08, 5, 0.15, -20)], 0.02, 4);
        output.WriteLine($"water lost {trace.Series.WaterKilograms[^1] * 1000:0.0} g, wood {trace.Typical[0].CoreCelsius[^1]:0.0} °C");
        Assert.InRange(trace.Series.WaterKilograms[^1], -0.05, -1e-4);
    }

    private static double Vapor(BoxTrace trace, int report) => trace.Series.AirHumidity[report] * Saturation(trace.Series.AirCelsius[report]);

    private static double Saturation(double celsius) => SaturationPressure.OverWater(celsius + 273.15);
}
