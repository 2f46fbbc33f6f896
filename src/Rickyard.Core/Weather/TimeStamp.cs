using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Date and time as tables write them. The order of day and month in 3/4/2024 is the caller's to know.</summary>
/// <param name="Local">As written; 24:00 is 0:00 of the next day.</param>
/// <param name="UtcOffsetHours">Written offset, 0 for Z; null: none is written. [h]</param>
/// <param name="HasClock">A time of day is written.</param>
internal readonly partial record struct TimeStamp(LocalDateTime Local, double? UtcOffsetHours, bool HasClock)
{
    private static readonly string[] MonthNames = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>Two numbers parted by slashes before a year: day and month in unknown order.</summary>
    public static (int First, int Second)? Slashes(string text)
    {
        var match = SlashDate().Match(text.Trim());
        return match.Success ? (Number(match.Groups["a"]), Number(match.Groups["b"])) : null;
    }

    /// <summary>Reads a time, or null when it is none.</summary>
    /// <param name="text">Date, or date and time.</param>
    /// <param name="monthFirst">Whether 3/4/2024 is 4 March.</param>
    public static TimeStamp? Parse(string text, bool monthFirst)
    {
        var trimmed = text.Trim();
        foreach (var pattern in new[] { YearFirst(), Compact(), DayFirst(), NamedMonth(), SlashDate() })
        {
            var match = pattern.Match(trimmed);
            if (match.Success) return Build(match, monthFirst);
        }

        return null;
    }

    /// <summary>Hour and minute of 7, 07:30 or 7:30 PM; null when it is none.</summary>
    public static (int Hour, int Minute)? ParseClock(string text)
    {
        var match = ClockAlone().Match(text.Trim());
        return match.Success ? Clock(match) : null;
    }

    private static TimeStamp? Build(Match match, bool monthFirst)
    {
        int year = Number(match.Groups["y"]), month = Month(match, monthFirst), day = Day(match, monthFirst);
        if (year is < 1800 or > 2200 || month is < 1 or > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month)) return null;
        var date = new LocalDate(year, month, day).AtMidnight();
        if (!match.Groups["h"].Success) return new(date, null, false);
        return Clock(match) is { } clock ? new(date.PlusMinutes(60 * clock.Hour + clock.Minute), Offset(match.Groups["o"].Value), true) : null;
    }

    private static (int Hour, int Minute)? Clock(Match match)
    {
        int hour = Number(match.Groups["h"]), minute = match.Groups["m"].Success ? Number(match.Groups["m"]) : 0;
        var half = match.Groups["p"].Value.ToLowerInvariant();
        if (half.Length > 0 && hour is < 1 or > 12) return null;
        if (half == "am" && hour == 12) hour = 0;
        if (half == "pm" && hour < 12) hour += 12;
        return minute <= 59 && (hour <= 23 || (hour == 24 && minute == 0)) ? (hour, minute) : null;
    }

    private static int Month(Match match, bool monthFirst)
    {
        if (match.Groups["n"].Success) return Array.IndexOf(MonthNames, match.Groups["n"].Value.ToLowerInvariant()[..3]) + 1;
        return Number(match.Groups["mo"].Success ? match.Groups["mo"] : match.Groups[monthFirst ? "a" : "b"]);
    }

    private static int Day(Match match, bool monthFirst) => Number(match.Groups["d"].Success ? match.Groups["d"] : match.Groups[monthFirst ? "b" : "a"]);

    private static double? Offset(string text)
    {
        if (text.Length == 0) return null;
        if (text is "Z" or "z" || text.Equals("UTC", StringComparison.OrdinalIgnoreCase)) return 0;
        var digits = text[1..].Replace(":", "", StringComparison.Ordinal);
        var hours = int.Parse(digits[..2], CultureInfo.InvariantCulture) + (digits.Length > 2 ? int.Parse(digits[2..], CultureInfo.InvariantCulture) / 60.0 : 0);
        return text[0] == '-' ? -hours : hours;
    }

    private static int Number(Group group) => int.Parse(group.Value, CultureInfo.InvariantCulture);

    private const string Time = @"(?:(?:[T ]\s*|:)(?<h>\d{1,2}):?(?<m>\d{2})(?::\d{2}(?:[.,]\d+)?)?\s*(?<p>[AaPp][Mm])?\s*(?<o>Z|UTC|[+-]\d{2}(?::?\d{2})?)?)?$";

    [GeneratedRegex(@"^(?<y>\d{4})[-/.](?<mo>\d{1,2})[-/.](?<d>\d{1,2})" + Time)]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^(?<y>\d{4})(?<mo>\d{2})(?<d>\d{2})" + Time)]
    private static partial Regex Compact();

    [GeneratedRegex(@"^(?<d>\d{1,2})[.](?<mo>\d{1,2})[.](?<y>\d{4})" + Time)]
    private static partial Regex DayFirst();

    [GeneratedRegex(@"^(?<d>\d{1,2})[- ](?<n>[A-Za-z]{3,9})[- ](?<y>\d{4})" + Time)]
    private static partial Regex NamedMonth();

    [GeneratedRegex(@"^(?<a>\d{1,2})/(?<b>\d{1,2})/(?<y>\d{4})" + Time)]
    private static partial Regex SlashDate();

    [GeneratedRegex(@"^(?<h>\d{1,2})(?::(?<m>\d{2})(?::\d{2})?)?\s*(?<p>[AaPp][Mm])?$")]
    private static partial Regex ClockAlone();
}
