using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>Turns the time cells of a log into seconds: elapsed numbers, dates with times, or times of day that begin anew at midnight.</summary>
/// <param name="header">The header.</param>
/// <param name="rows">Cells of every row.</param>
internal sealed partial class LogTimes(LogHeader header, IReadOnlyList<string[]> rows)
{
    private const double Day = NodaConstants.SecondsPerDay;
    private static readonly LocalDateTime Origin = new(2000, 1, 1, 0, 0);

    /// <summary>The time of every row as written.</summary>
    public string[] Stamps { get; } = [.. rows.Select(cells => Stamp(header, cells))];

    /// <summary>Seconds of every row, from an origin of no meaning; null where the cell is no time.</summary>
    public double?[] Seconds()
    {
        if (header.Of(LogColumnKind.Elapsed) is { } elapsed) return [.. rows.Select(cells => CellText.Number(cells[elapsed.Index], header.Separator == ';') * elapsed.Scale)];
        if (Stamps.All(stamp => TimeStamp.ParseClock(stamp) is not null)) return TimesOfDay();
        double?[] monthFirst = Dated(true), dayFirst = Dated(false);
        return IsBetter(dayFirst, monthFirst) ? dayFirst : monthFirst;
    }

    private static string Stamp(LogHeader header, string[] cells)
    {
        if (header.Of(LogColumnKind.Elapsed) is { } elapsed) return cells[elapsed.Index];
        LogColumn?[] parts = [header.Of(LogColumnKind.Date), header.Of(LogColumnKind.Clock)];
        return string.Join(' ', parts.OfType<LogColumn>().Select(column => cells[column.Index]));
    }

    private double?[] TimesOfDay()
    {
        var seconds = new double?[Stamps.Length];
        double day = 0, before = 0;
        for (var row = 0; row < seconds.Length; row++)
        {
            var (hour, minute) = TimeStamp.ParseClock(Stamps[row])!.Value;
            var now = 3600 * hour + 60 * minute + SecondsIn(Stamps[row]);
            if (now < before - Day / 2) day += Day;
            seconds[row] = day + now;
            before = now;
        }

        return seconds;
    }

    private double?[] Dated(bool monthFirst) => [.. Stamps.Select(stamp => TimeStamp.Parse(stamp, monthFirst) is { HasClock: true } time ? Since(time) + SecondsIn(stamp) : (double?)null)];

    private static double Since(TimeStamp time) =>
        Period.Between(Origin, time.Local, PeriodUnits.Minutes).Minutes * 60 - 3600 * (time.UtcOffsetHours ?? 0);

    /// <summary>Day and month are read in the order in which more rows are times and the log is shorter.</summary>
    private static bool IsBetter(double?[] one, double?[] other)
    {
        int read = one.Count(seconds => seconds is not null), otherRead = other.Count(seconds => seconds is not null);
        return read > otherRead || (read == otherRead && one.Max() - one.Min() < other.Max() - other.Min());
    }

    private static double SecondsIn(string stamp) =>
        Clock().Match(stamp) is { Success: true } match ? double.Parse(match.Groups[1].Value.Replace(',', '.'), CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"\d{1,2}:\d{2}:(\d{2}(?:[.,]\d+)?)")]
    private static partial Regex Clock();
}
