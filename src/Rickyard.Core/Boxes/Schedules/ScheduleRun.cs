using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>A candidate made a case, run on the usual grid with all pulls.</summary>
internal static class ScheduleRun
{
    private const int Reports = 64;

    /// <summary>Shortest run: an hour, where everything is ready at once. [d]</summary>
    private const double Shortest = 1.0 / 24;

    internal static DryingRun Of(
        DryingCase drying, BoxPlan plan, ScheduleCandidate chosen, ScheduleRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather)
    {
        var days = Math.Max(Shortest, chosen.Days);
        var period = new BoxPeriod(null, plan with { Stages = Stages(plan.Box, chosen, days) });
        var charge = ChargeForecast.ClassesOf(drying).Zip(chosen.Classes, (one, pull) => one with { PullDay = pull.PullDay, Wood = At(one.Wood, period, days) });
        var scheduled = At(drying, period, days) with { Charge = [.. charge] };
        return DryingForecast.Run(scheduled, new(request.Members, request.Seed, request.BandLow, request.BandHigh), weather);
    }

    /// <summary>The candidate with what the run on the usual grid found.</summary>
    internal static ScheduleCandidate AsRun(ScheduleCandidate chosen, DryingRun run)
    {
        var charge = run.Charge!;
        var classes = chosen.Classes.Select(pull => AsRun(pull, run.Days, charge.Classes[pull.Class].Typical)).ToList();
        return chosen with
        {
            Classes = classes,
            EnergyJoules = charge.Series.EnergyJoules[^1],
            WaterKilograms = charge.Series.WaterKilograms[^1],
            Gap = classes.Max(one => Math.Abs(one.Gap)),
        };
    }

    private static DryingCase At(DryingCase drying, BoxPeriod period, double days) => drying with { Periods = [period], Days = days, ReportEvery = days / Reports };

    private static List<BoxStage> Stages(BoxDescription box, ScheduleCandidate chosen, double days)
    {
        var settings = new BoxSettings(double.IsNaN(chosen.Celsius) ? null : chosen.Celsius, chosen.HumidityLimit);
        var pulled = chosen.Classes.Max(one => one.PullDay ?? days);
        var drying = settings.Drying(box, Math.Max(Shortest, pulled));
        return pulled < days - 1e-6 ? [drying, new(StageKind.ClosedRest, null, settings.Celsius)] : [drying with { Days = null }];
    }

    private static ClassPull AsRun(ClassPull pull, double[] days, MoistureSeries series)
    {
        if (pull.PullDay is not { } day) return pull with { Mean = series.Mean[^1], Core = series.Core[^1], Shell = series.Shell[^1] };
        double At(double[] values) => MathNet.Numerics.Interpolate.Linear(days, values).Interpolate(day);
        return pull with
        {
            MeanAtPull = At(series.Mean),
            CoreAtPull = At(series.Core),
            ShellAtPull = At(series.Shell),
            MassAtPull = At(series.MassKilograms),
            MassAtLoading = series.MassKilograms[0],
            Mean = ValueAt(series.Mean),
            Core = ValueAt(series.Core),
            Shell = ValueAt(series.Shell),
        };

        // A class that is ready before the last one is out by then.
        double ValueAt(double[] values) => MathNet.Numerics.Interpolate.Linear(days, values).Interpolate(Math.Min(days[^1], day + pull.RestDays));
    }
}
