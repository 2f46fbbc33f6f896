using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>How fast a charge warms: the box follows one temperature a piece, the heat field of a piece in the box's recorded air says when its core is there.</summary>
public sealed class BoxWarmingTests(ITestOutputHelper output)
{
    private static readonly BoxDescription Ample = SampleBox.Cabinet with { Heater = new(20000, 1, 0, HeaterFuel.Electricity, 1), WallConductance = 0.2, Fan = new(2, 0.3, 0), Vent = BoxVent.Shut };

    [Fact]
    public void Core_of_a_piece_in_a_box_with_ample_heat_warms_as_in_steady_air_of_that_kind()
    {
        var charge = SampleBox.Class(0.08, 5, 0.7, 15);
        var trace = SampleBox.Run(SampleBox.Plan(Ample, 70), [charge], 1, 96);
        var box = Field(charge, trace.Air[0]).TimeToReach(56, 60, 86400)!.Value;
        var steady = Field(charge, AirSeries.Steady(Met(trace, 0.4))).TimeToReach(56, 60, 86400)!.Value;
        var mean = Array.FindIndex(trace.Typical[0].CoreCelsius, celsius => celsius >= 56) * 900.0;
        output.WriteLine($"core at 56 °C after {box / 60:0} min in the box, {steady / 60:0} in its later air all along; the one temperature of the piece after {mean / 60:0}");
        Assert.InRange(box / steady, 1, 1.35);
        Assert.InRange(mean, 0.3 * box, box);
    }

    [Fact]
    public void Frozen_wood_warms_later_by_its_heat_of_melting()
    {
        const double watts = 300, moisture = 0.8;
        double frozen = SecondsToTenDegrees(-10, moisture, watts), thawed = SecondsToTenDegrees(0.5, moisture, watts);
        var more = SampleBox.Class(0.08, 40).DryMass() * (WoodEnthalpy.Sensible(moisture, 273.65) - WoodEnthalpy.Sensible(moisture, 263.15));
        output.WriteLine($"frozen {frozen / 3600:0.00} h, just above {thawed / 3600:0.00} h; heat of the difference {(frozen - thawed) * watts / 1e6:0.0} MJ, of the wood {more / 1e6:0.0} MJ");
        Assert.InRange((frozen - thawed) * watts / more, 0.95, 1.3);
    }

    /// <summary>With a heater so small that its heat is what counts, in walls that hardly take any.</summary>
    private static double SecondsToTenDegrees(double celsius, double moisture, double watts)
    {
        var box = Ample.Shut() with { Heater = Ample.Heater with { Power = watts }, WallConductance = 0.05 };
        var trace = SampleBox.Run(SampleBox.Plan(box, 200, outsideCelsius: 0), [SampleBox.Class(0.08, 40, moisture, celsius)], 1, 288);
        return Array.FindIndex(trace.Typical[0].CoreCelsius, reached => reached >= 10) * 300.0;
    }

    private static Surroundings Met(BoxTrace trace, double day)
    {
        var air = trace.Air[0].Mean(day * 86400, 60);
        return new(air.Kelvins, air.VaporPressure, air.ConvectiveCoefficient, air.AbsorbedRadiation, RadiantView: air.RadiantView);
    }

    private static HeatedSplit Field(ChargeClass charge, AirSeries air) => new(
        SplitGrid.For(charge.Wood.Split), MobilityTable.Of(new(charge.Wood.BasicDensity, WaterMobility.FreeWaterOf(charge.Wood.Species.Anatomy))), new(charge.Wood.BasicDensity), air,
        charge.Wood.Start.Core, charge.Wood.Start.Celsius);
}
