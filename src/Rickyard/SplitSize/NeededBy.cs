using System.CommandLine;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Text;
using Rickyard.Commands;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.SplitSize;

/// <summary>Reads when the wood is needed, as a day of the calendar or as a time after the start. A month after the start is the same day of the month.</summary>
internal static partial class NeededBy
{
    private const double DaysPerMonth = 365.25 / 12;
    private const string WantedDay = "Give a day as year-month-day, such as \"2027-05-01\".";

    private static readonly TypedQuantity Allowed = new(QuantityUnits.Duration, 1 / 24.0, 3650, "1 hour to 10 years", "5 months");

    /// <summary>Days from the start; null where neither was typed or it is wrong.</summary>
    public static double? Read(ParseResult parsed, Option<string> by, Option<string> within, DryingCase drying, OptionReading reading)
    {
        if (reading.Has(by) && reading.Has(within)) reading.Wrong(by.Name, $"Both {by.Name} and {within.Name} are given.", "Give one of them.");
        if (reading.Has(by)) return Day(parsed.GetValue(by)!, by.Name, drying, reading);
        if (!reading.Has(within)) return null;
        return Months().Match(parsed.GetValue(within)!) is { Success: true } months ? MonthsAfter(months, drying) : reading.Quantity(within, Allowed);
    }

    private static double? Day(string text, string option, DryingCase drying, OptionReading reading)
    {
        var day = LocalDatePattern.Iso.Parse(text.Trim());
        if (!day.Success) reading.Wrong(option, $"{Echo.Of(text)} is not a day of the calendar.", WantedDay);
        else if (!drying.Start.IsDated) reading.Wrong(option, "The case does not say on which day it starts.", "Give \"at\" in its \"start\", or the time after the start with --in, such as --in \"5 months\".");
        else return NodaTime.Period.DaysBetween(drying.StartDate, day.Value);
        return null;
    }

    private static double MonthsAfter(Match match, DryingCase drying)
    {
        var months = double.Parse(match.Groups["count"].ValueSpan, CultureInfo.InvariantCulture);
        return drying.Start.IsDated && months == Math.Floor(months) && months <= 120
            ? NodaTime.Period.DaysBetween(drying.StartDate, drying.StartDate.PlusMonths((int)months))
            : months * DaysPerMonth;
    }

    [GeneratedRegex(@"^\s*(?<count>\d{1,6}(?:\.\d+)?)\s*(?:months?|mo)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Months();
}
