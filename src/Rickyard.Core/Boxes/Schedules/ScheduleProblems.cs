using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What keeps a schedule from being searched.</summary>
internal static class ScheduleProblems
{
    private const double ShortestDays = 0.25, LongestDays = 365;

    internal static IReadOnlyList<Problem> Of(DryingCase drying, ScheduleRequest request)
    {
        if (drying.Periods is not [BoxPeriod box]) return [new("air", "The case has no hot box.", "Give \"air\": { \"box\": … }; \"rickyard dry\" runs cases without one.")];
        List<Problem> problems = [];
        if (request.LatestDays is < ShortestDays or > LongestDays)
            problems.Add(new("by", Invariant($"{request.LatestDays:0.##} days from loading cannot be searched."), "Give 6 hours to 1 year."));
        problems.AddRange(Passed(drying, request));
        if (request.HighestCelsius < 25 && box.Plan.Box.Heater.Power > 0)
            problems.Add(new("highest", Invariant($"{request.HighestCelsius:0.#} °C is no warm box."), "Give 25 °C or more."));
        if (box.Plan.Box.Heater.Power > 0 && SafetyLimits.Refusal(request.HighestCelsius, box.Plan.Box.Heater.Band, box.Plan.Override, "highest") is { } refusal) problems.Add(refusal);
        problems.AddRange(BelowReach(box.Plan, request));
        return problems;
    }

    private static IEnumerable<Problem> Passed(DryingCase drying, ScheduleRequest request) =>
        ChargeForecast.ClassesOf(drying).Where(one => one.Wood.Start.Core < request.BandLow).Select(one => new Problem(
            one.Name, Invariant($"Its core starts at {100 * one.Wood.Start.Core:0.#} % dry basis, below the band of {100 * request.BandLow:0.#}–{100 * request.BandHigh:0.#} %: the target is passed already."),
            "Leave it out of the charge, or give a band that it is still above; humid air gives little back."));

    /// <summary>A band below what the air brought in can dry to even when warmed.</summary>
    private static IEnumerable<Problem> BelowReach(BoxPlan plan, ScheduleRequest request)
    {
        if (plan.Ambient.Weather is not null) yield break;
        var celsius = plan.Box.Heater.Power > 0 ? request.HighestCelsius : plan.Ambient.Celsius;
        var vapor = plan.Ambient.RelativeHumidity * Air.SaturationPressure.OverWater(plan.Ambient.Celsius + Temperature.IcePointKelvins);
        var humidity = Math.Min(1, vapor / Air.SaturationPressure.OverWater(celsius + Temperature.IcePointKelvins));
        var balance = SorptionIsotherm.At(celsius).Moisture(humidity);
        if (request.BandHigh < balance)
            yield return new(
                "band", Invariant($"The band ends at {100 * request.BandHigh:0.#} % dry basis, but the air of this box, outside air warmed to {celsius:0.#} °C, brings wood to {100 * balance:0.#} % at best."),
                Invariant($"Give a band above {100 * balance:0.#} %, or a higher temperature."));
    }
}
