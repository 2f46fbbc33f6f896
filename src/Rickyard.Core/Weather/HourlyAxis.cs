using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>
/// Puts rows of any step onto an axis of hours: a row belongs to the hour that ends at or after it; several rows in an hour are averaged and
/// their rain is summed; rain of rows 2 to 6 h apart is shared by the hours before. A row written twice counts once.
/// </summary>
internal static class HourlyAxis
{
    /// <summary>Longest step between rows that still counts as hourly data. [min]</summary>
    public const int LongestStepMinutes = 360;

    private const long MinutesAnHour = 60;

    /// <summary>Longest period read. [a]</summary>
    public const int LongestYears = 60;

    /// <summary>Median minutes between successive rows; 60 where there is one row.</summary>
    public static double StepMinutes(IReadOnlyList<WeatherSample> sorted)
    {
        var steps = sorted.Zip(sorted.Skip(1), (left, right) => Minutes(left.At, right.At)).Where(step => step > 0).Order().ToArray();
        return steps.Length > 0 ? steps[steps.Length / 2] : MinutesAnHour;
    }

    /// <summary>How many hours the rows span.</summary>
    public static long Span(IReadOnlyList<WeatherSample> sorted) => HourOf(sorted[0].At, sorted[^1].At) + 1;

    /// <summary>Adds a problem when a period is too long to be meant.</summary>
    public static void CheckSpan(LocalDateTime first, LocalDateTime last, ProblemList problems)
    {
        if (last.Year - first.Year > LongestYears) problems.Add(
            $"Its rows span {first.Year} to {last.Year}.",
            $"Give at most {LongestYears} years; look for a wrong date.");
    }

    /// <summary>When the first hour begins.</summary>
    public static LocalDateTime Start(IReadOnlyList<WeatherSample> sorted) => EndOfHour(sorted[0].At).PlusHours(-1);

    /// <summary>Fills the series.</summary>
    public static void Place(IReadOnlyList<WeatherSample> sorted, ObservedSeries series)
    {
        var step = (int)Math.Round(StepMinutes(sorted) / MinutesAnHour);
        var repeated = 0;
        foreach (var hour in sorted.GroupBy(sample => HourOf(sorted[0].At, sample.At)))
        {
            var rows = Distinct([.. hour], ref repeated);
            var index = (int)hour.Key;
            series.Celsius[index] = Mean(rows, row => row.Celsius);
            series.RelativeHumidity[index] = Mean(rows, row => row.RelativeHumidity);
            series.WindSpeed[index] = Mean(rows, row => row.WindSpeed);
            series.GlobalSun[index] = Mean(rows, row => row.GlobalSun);
            series.StationPressure[index] = Mean(rows, row => row.StationPressure);
            if (rows.Any(row => row.Rain is not null)) EpwRain.Accumulated(series.Rain, index, Math.Max(1, step), rows.Sum(row => row.Rain ?? 0));
        }

        double?[][] sampled = [series.Celsius, series.RelativeHumidity, series.WindSpeed, series.GlobalSun, series.StationPressure];
        foreach (var values in sampled) GapFilling.Join(values, step);
        if (repeated > 0) series.Notes.Add($"{repeated} rows are written twice; each counts once.");
        NoteStep(sorted, series);
    }

    private static void NoteStep(IReadOnlyList<WeatherSample> sorted, ObservedSeries series)
    {
        var step = StepMinutes(sorted);
        if (step > MinutesAnHour) series.Notes.Add(FormattableString.Invariant($"The rows are {step / MinutesAnHour:0.#} h apart; the hours between lie on straight lines, and rain is shared by them."));
        if (step < MinutesAnHour) series.Notes.Add(FormattableString.Invariant($"The rows are {step:0} min apart and averaged to hours."));
    }

    private static List<WeatherSample> Distinct(List<WeatherSample> rows, ref int repeated)
    {
        var kept = new List<WeatherSample>();
        foreach (var row in rows)
        {
            if (kept.Exists(row.Repeats)) repeated++;
            else kept.Add(row);
        }

        return kept;
    }

    private static double? Mean(List<WeatherSample> rows, Func<WeatherSample, double?> value) => rows.Average(value);

    private static long HourOf(LocalDateTime first, LocalDateTime time) => Minutes(EndOfHour(first), EndOfHour(time)) / MinutesAnHour;

    private static LocalDateTime EndOfHour(LocalDateTime time)
    {
        var full = time.With(TimeAdjusters.TruncateToHour);
        return full == time ? time : full.PlusHours(1);
    }

    private static long Minutes(LocalDateTime from, LocalDateTime to) => Period.Between(from, to, PeriodUnits.Minutes).Minutes;
}
