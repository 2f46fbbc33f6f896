using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>A box through which endless air is blown is no box: its wood dries as in open air of the same kind.</summary>
public sealed class OpenAirTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(60, 1.0)]
    [InlineData(35, 0.5)]
    public void Box_with_endless_fresh_air_equals_open_air(double celsius, double exposed)
    {
        // Walls as warm as the air: no loss to outside, little to store.
        var box = SampleBox.Cabinet.Shut() with { Vent = new(20, 0, null), WallConductance = 0, WallHeatCapacity = 100, Heater = new(1e7, 0.01, 0, HeaterFuel.Electricity, 1) };
        var charge = SampleBox.Class(0.06, 1, celsius: celsius) with { ExposedShare = exposed };
        var trace = SampleBox.Run(SampleBox.Plan(box, celsius), [charge], 8, 8);
        var open = Open(charge, celsius, box.Fan.Speed);
        for (var day = 1; day <= 8; day++)
        {
            open.AdvanceTo(day * 86400);
            var (mean, core) = (open.Read(0).Mean, open.Read(0).Core);
            output.WriteLine($"day {day}: mean {trace.Typical[0].Mean[day]:P3}, open {mean:P3}; core {trace.Typical[0].Core[day]:P3}, open {core:P3}; wall {trace.Series.WallCelsius[day]:0.00}");
            Assert.Equal(mean, trace.Typical[0].Mean[day], 0.0015);
            Assert.Equal(core, trace.Typical[0].Core[day], 0.0015);
        }
    }

    private static SplitSolver Open(ChargeClass charge, double celsius, double speed)
    {
        var grid = SplitGrid.For(charge.Wood.Split);
        double kelvins = celsius + 273.15, vapor = 0.6 * SaturationPressure.OverWater(15 + 273.15);
        var air = new Surroundings(
            kelvins, vapor, charge.ExposedShare * SurfaceTransfer.ConvectiveCoefficient(speed, charge.Wood.Split.SurfaceDiameter, kelvins), RadiantView: charge.ExposedShare);
        var free = WaterMobility.FreeWaterOf(charge.Wood.Species.Anatomy);
        var solver = new SplitSolver([grid], MobilityTable.Of(new(charge.Wood.BasicDensity, free)), [MemberWood.Of(charge.Wood, MemberDraw.Typical).Wood], AirSeries.Steady(air));
        solver.Moisture.Fill(charge.Wood.Start.Core);
        solver.SetCelsius(celsius);
        return solver;
    }
}
