using NodaTime;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>What a run of a box writes down at every report.</summary>
internal sealed class BoxLog
{
    private readonly int _reports;
    private double _heaterBefore, _dayBefore;

    internal BoxLog(int reports, int classes)
    {
        _reports = reports;
        Series = new(New(), New(), New(), New(), New(), New());
        Classes = [.. Enumerable.Range(0, classes).Select(_ => new MoistureSeries(New(), New(), New(), New(), New(), New(), New()))];
        (Equilibrium, SurfaceShare) = (New(), New());
    }

    internal BoxSeries Series { get; }

    internal IReadOnlyList<MoistureSeries> Classes { get; }

    internal double[] Equilibrium { get; }

    internal double[] SurfaceShare { get; }

    internal void Box(int report, in BoxAir air, double humidity, double water, BoxBooks books, double bought, double[] days)
    {
        var celsius = air.Kelvins - Temperature.IcePointKelvins;
        (Series.AirCelsius[report], Series.AirHumidity[report], Series.WallCelsius[report]) = (celsius, humidity, air.WallKelvins - Temperature.IcePointKelvins);
        (Series.WaterKilograms[report], Series.EnergyJoules[report]) = (water, bought);
        var seconds = (days[report] - _dayBefore) * NodaConstants.SecondsPerDay;
        Series.HeaterWatts[report] = seconds > 0 ? (books.Heater - _heaterBefore) / seconds : 0;
        (_heaterBefore, _dayBefore) = (books.Heater, days[report]);
        Equilibrium[report] = SorptionIsotherm.At(celsius).Moisture(humidity);
    }

    internal void Class(int charged, int report, in SplitReading reading, double loss)
    {
        var series = Classes[charged];
        (series.Mean[report], series.Core[report], series.Shell[report], series.End[report]) = (reading.Mean, reading.Core, reading.Shell, reading.End);
        (series.CoreCelsius[report], series.MassKilograms[report], series.LossFraction[report]) = (reading.Celsius, reading.Mass, loss);
    }

    internal void Share(int report, StageLimit limit) => SurfaceShare[report] = Math.Clamp(limit.VaporShare + limit.SurfaceShare, 0, 1);

    private double[] New() => new double[_reports];
}
