using System.CommandLine;
using NodaTime.Text;
using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What is asked of a charge, read from the command line beside its case; whatever is wrong goes to the reading.</summary>
internal sealed class ChargeQuestion(ParseResult parsed, ChargeOptions options, OptionReading reading)
{
    private static readonly TypedQuantity Time = new(QuantityUnits.Duration, 0.25, 365, "6 hours to 1 year", "10 days");
    private static readonly TypedQuantity Warmth = new(QuantityUnits.Temperature, 25, SafetyLimits.CutOutCelsius, "25 to 93 °C", "70 °C");

    /// <summary>The request; only to be used where nothing was wrong.</summary>
    /// <param name="drying">The case, or null where it could not be read: what stands alone is asked all the same.</param>
    public ScheduleRequest Read(DryingCase? drying)
    {
        var band = BandText.Read(parsed.GetValue(options.Band) ?? "", reading);
        var (members, seed) = (parsed.GetValue(options.Members), parsed.GetValue(options.Seed));
        EnsembleCheck.Ask(members, seed, reading);
        PictureFile.Ask(parsed.GetValue(options.Picture), reading);
        return new(Goal(), band?.Low ?? 0, band?.High ?? 0, Days(drying), Highest(drying), members, seed);
    }

    private ChargeGoal Goal()
    {
        var text = parsed.GetValue(options.Goal) ?? "";
        if (text.Equals("even", StringComparison.OrdinalIgnoreCase)) return ChargeGoal.Even;
        if (!text.Equals("usable", StringComparison.OrdinalIgnoreCase)) reading.Wrong("--goal", $"{Echo.Of(text)} is no goal.", "Give \"usable\" (the core in the band) or \"even\" (core, shell and mean near it).");
        return ChargeGoal.UsableNow;
    }

    private double Days(DryingCase? drying)
    {
        var given = reading.Quantity(options.In, Time);
        if (!reading.Has(options.By)) return given ?? drying?.Days ?? 1;
        if (reading.Has(options.In)) reading.Wrong("--by, --in", "Both are given.", "Give one of them.");
        return ByDate(parsed.GetValue(options.By) ?? "", drying) ?? 1;
    }

    private double? ByDate(string text, DryingCase? drying)
    {
        var day = LocalDatePattern.Iso.Parse(text.Trim());
        if (!day.Success) reading.Wrong("--by", $"{Echo.Of(text)} is not a day.", "Give year-month-day, such as \"2026-03-14\".");
        if (!day.Success || drying is null) return null;
        if (!drying.Start.IsDated) reading.Wrong("--by", "The case does not say on which day it starts.", "Give \"at\" in its \"start\", or --in with the time from loading.");
        else if (day.Value <= drying.StartDate) reading.Wrong("--by", $"{Echo.Of(text)} is not after the loading on {LocalDatePattern.Iso.Format(drying.StartDate)}.", "Give a later day.");
        return NodaTime.Period.DaysBetween(drying.StartDate, day.Value);
    }

    private double Highest(DryingCase? drying)
    {
        var celsius = Warmth.TryRead(parsed.GetValue(options.Highest) ?? "", "--highest", out var read, out var problem) ? read : 0;
        if (problem is not null) reading.Wrong(problem);
        else if (PlanOf(drying) is { } plan && SafetyLimits.Refusal(celsius, plan.Box.Heater.Band, plan.Override, "--highest") is { } refusal) reading.Wrong(refusal);
        return celsius;
    }

    private static BoxPlan? PlanOf(DryingCase? drying) => drying?.Periods.OfType<BoxPeriod>().FirstOrDefault()?.Plan;
}
