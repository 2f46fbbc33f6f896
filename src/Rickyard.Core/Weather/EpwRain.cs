using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Spreads the depths that an EPW file accumulates over several hours.</summary>
internal static class EpwRain
{
    /// <summary>
    /// A depth of n hours, less what the hours before it already hold, is shared evenly by those of the n hours that have none.
    /// </summary>
    public static void Spread(ObservedSeries series, IEnumerable<EpwRow> rows)
    {
        foreach (var row in rows.Where(row => row is { RainHours: > 1, Rain: not null } && !(series.Typical && row is { Month: 2, Day: 29 })))
        {
            var year = series.Typical ? TypicalCalendar.NominalYear : row.Year;
            var last = HourlyWeather.HoursBetween(series.Start, new LocalDateTime(year, row.Month, row.Day, 0, 0)) + row.Hour - 1;
            Accumulated(series.Rain, last, row.RainHours, row.Rain!.Value);
        }
    }

    /// <summary>Shares a depth over the hours that end with <paramref name="last"/>.</summary>
    public static void Accumulated(double?[] rain, int last, int hours, double depth)
    {
        var first = Math.Max(0, last - hours + 1);
        var open = Enumerable.Range(first, last - first + 1).Where(hour => rain[hour] is null).ToList();
        if (open.Count == 0) return;
        var held = Enumerable.Range(first, last - first + 1).Sum(hour => rain[hour] ?? 0);
        foreach (var hour in open) rain[hour] = Math.Max(0, depth - held) / open.Count;
    }
}
