using NodaTime;
using Rickyard.Core.Air;
using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.HeatTreatment;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Boxes.HeatTreatment;

public sealed class HeatTreatmentForecastTests
{
    private const double Hours = 3600;

    [Fact]
    public void Charge_in_a_box_of_75_degrees_holds_sixty_and_one_of_58_does_not()
    {
        Assert.Contains(Record(Class(0.07, 15), 75).Findings, finding => finding.IsHeld && finding.Schedule.Celsius == 60);
        var cool = Record(Class(0.07, 15), 58);
        Assert.DoesNotContain(cool.Findings, finding => finding.IsHeld && finding.Schedule.Celsius == 60);
        Assert.InRange(cool.Findings[0].Warmest, 40, 58);
    }

    [Fact]
    public void Frozen_and_larger_pieces_reach_their_hold_later()
    {
        double usual = FullAt(Class(0.07, 15)), frozen = FullAt(Class(0.07, -15)), larger = FullAt(Class(0.10, 15)), mixed = FullAt(Class(0.07, 15, 0.15));
        Assert.InRange(frozen / usual, 1.15, 2);
        Assert.True(larger > 1.2 * usual && mixed > 1.1 * usual);
    }

    [Fact]
    public void Coldest_class_of_a_charge_decides()
    {
        var log = HeatTreatmentForecast.Run([(Class(0.05, 15), Air(75)), (Class(0.10, 15), Air(75))], 101325, CancellationToken.None);
        Assert.Equal(log.Celsius[1], Enumerable.Range(0, log.Seconds.Length).Select(log.Coldest));
        Assert.True(log.IsPredicted);
        Assert.Equal("day 0, 01:05", log.Stamps[65]);
    }

    [Fact]
    public void Cancelled_forecast_stops() => Assert.Throws<OperationCanceledException>(() => HeatTreatmentForecast.Run(Class(0.07, 15), Air(75), 101325, new CancellationToken(true)));

    private static double FullAt(ChargeClass charge) => Record(charge, 75).Findings.Single(finding => finding.Schedule.Celsius == 60).FullAt!.Value;

    private static HeatRecord Record(ChargeClass charge, double celsius) => HeatRecord.Of(HeatTreatmentForecast.Run(charge, Air(celsius), 101325, CancellationToken.None), 0);

    private static AirSeries Air(double celsius)
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        Surroundings air = new(kelvins, 0.3 * SaturationPressure.Of(kelvins), SurfaceTransfer.ConvectiveCoefficient(1, 0.08, kelvins));
        return new([(24 * Hours, air)]);
    }

    private static ChargeClass Class(double radius, double celsius, double spread = 0)
    {
        var oak = SpeciesCatalogue.Find("post oak").Value!;
        return new($"{100 * radius:0} cm", new DryingCase
        {
            Name = "wedges",
            Species = oak,
            BasicDensity = oak.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromMetres(radius), Angle.FromDegrees(60), Length.FromInches(16)),
            SizeSpread = spread,
            Start = new(0.7, null, null, false, celsius, new LocalDate(2001, 1, 1)),
            Periods = [],
            Days = 1,
            ReportEvery = 1,
        }, 20, ShelfPlace.Middle, 1);
    }
}
