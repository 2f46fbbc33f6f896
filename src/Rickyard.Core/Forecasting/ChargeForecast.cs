using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Changes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Forecasting;

/// <summary>
/// Runs a charge in a hot box: once with the typical split of every class and the box's own balances, and then, for the bands, an ensemble of each class in the air that the
/// box then had. What one piece has of its own hardly moves the air that all share; what a whole lot has (its rate factor) would, a little, and is not followed.
/// </summary>
internal static class ChargeForecast
{
    /// <summary>Run it; the run's own series are those of the first class.</summary>
    internal static DryingRun Run(
        DryingCase drying, DryingRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, IProgress<double>? progress, CancellationToken cancellation)
    {
        var plan = ((BoxPeriod)drying.Periods[0]).Plan;
        var charge = ClassesOf(drying);
        var days = DryingForecast.ReportDays(drying);
        SortedSet<string> notes = [];
        var outside = OutsideOf(drying, plan, weather, notes);
        var trace = new BoxRun(plan, charge, outside, days, GridResolution.Default, StepControl.Forecast).Run(DryingForecast.SnapshotReports(days, request), cancellation);
        var classes = charge.Select((one, i) => Class(one, trace, i, outside.Pressure, request, PartOfProgress.Of(progress, i, charge.Count), cancellation)).ToList();
        return new()
        {
            Case = drying,
            Days = days,
            Typical = classes[0].Typical,
            LowTenth = classes[0].LowTenth,
            Median = classes[0].Median,
            HighTenth = classes[0].HighTenth,
            Window = classes[0].Window,
            Snapshots = trace.Snapshots,
            AirEquilibrium = trace.AirEquilibrium,
            SurfaceShare = trace.SurfaceShare,
            Notes = [.. notes],
            Charge = new(plan, trace.Series, trace.Use, trace.Limits, classes, trace.DripKilograms)
            {
                Changes = ChangeTrial.All(plan, charge, outside, drying.Days, SafetyLimits.LongContactCelsius, cancellation),
            },
            Members = request.Members,
            Seed = request.Seed,
            ModelVersion = ModelVersion.Current,
        };
    }

    /// <summary>The classes of a charge; a case without any is one class of its own.</summary>
    internal static IReadOnlyList<ChargeClass> ClassesOf(DryingCase drying) =>
        drying.Charge.Count > 0 ? drying.Charge : [new(drying.Name, drying, drying.Pieces ?? 1, ShelfPlace.Middle, 1)];

    /// <summary>The air outside a box over the length of a case.</summary>
    internal static OutsideSeries OutsideOf(DryingCase drying, BoxPlan plan, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, SortedSet<string> notes)
    {
        if (plan.Ambient.Weather is not { } name) return OutsideSeries.Steady(plan.Ambient.Celsius, plan.Ambient.RelativeHumidity);
        var usual = weather[name].Usual(drying.StartDate.AtMidnight(), (int)Math.Ceiling(drying.Days * 24) + 1);
        notes.UnionWith(usual.Notes);
        return OutsideSeries.Of(usual);
    }

    private static ClassRun Class(
        ChargeClass charged, BoxTrace trace, int index, double pressure, DryingRequest request, IProgress<double>? progress, CancellationToken cancellation)
    {
        var air = new CaseAir(charged.Wood, new Dictionary<WeatherName, WeatherScenario>(), new(trace.Air[index], pressure));
        var run = new GroupRun(charged.Wood, air, trace.Days, cancellation);
        var tracks = DryingForecast.Members(charged.Wood, request, run, progress);
        var (low, median, high) = Bands.Of(tracks);
        return new(
            charged, trace.Typical[index], low, median, high,
            Bands.Window(trace.Days, tracks, request.BandLow, request.BandHigh));
    }
}
