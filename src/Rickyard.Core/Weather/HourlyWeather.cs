using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>Hour after hour of weather at one place, complete and in range, in local standard time.</summary>
/// <param name="Name">Place as a person would say it.</param>
/// <param name="Latitude">North positive; NaN where nobody said. [°]</param>
/// <param name="Longitude">East positive; NaN where nobody said. [°]</param>
/// <param name="ElevationMetres">Above sea level. [m]</param>
/// <param name="Start">When the first hour begins.</param>
/// <param name="Hours">The hours, in order and without holes; what a station samples belongs to the end of its hour.</param>
/// <param name="Notes">What was filled, clamped or supposed, each a sentence a person can read.</param>
/// <param name="Source">Where the numbers come from and on what terms.</param>
/// <param name="Typical">A typical year of 8760 hours from 1 January: its calendar year means nothing and it repeats. False: a real period.</param>
public sealed record HourlyWeather(
    string Name,
    double Latitude,
    double Longitude,
    double ElevationMetres,
    LocalDateTime Start,
    IReadOnlyList<WeatherHour> Hours,
    IReadOnlyList<string> Notes,
    string Source,
    bool Typical = false)
{
    /// <summary>When the last hour ends.</summary>
    public LocalDateTime End => Start.PlusHours(Hours.Count);

    /// <summary>
    /// The weather of a span of hours. A typical year is looked up by month, day and hour, wraps past 31 December, and lends 28 February to
    /// the 29th. A real period must hold the whole span.
    /// </summary>
    /// <param name="start">When the first hour wanted begins, on the full hour.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    public Result<HourlyWeather> Window(LocalDateTime start, int hours)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hours);
        if (Typical) return ResultOf.Success(this with { Start = start, Hours = TypicalHours(start, hours), Typical = false });
        var first = HoursBetween(Start, start);
        return first >= 0 && first + hours <= Hours.Count
            ? ResultOf.Success(this with { Start = start, Hours = [.. Hours.Skip(first).Take(hours)] })
            : ResultOf.Failure<HourlyWeather>(
                Name,
                $"The weather covers {Say(Start)} to {Say(End)}, but {Say(start)} to {Say(start.PlusHours(hours))} is wanted.",
                "Choose dates inside it, join it with a typical year, or give a file that covers them.");
    }

    /// <summary>A real year used as if it were typical: needs a full year; where an hour of the year occurs twice, the later one is kept.</summary>
    public Result<HourlyWeather> AsTypicalYear()
    {
        if (Typical) return ResultOf.Success(this);
        if (Hours.Count < TypicalCalendar.Hours)
        {
            return ResultOf.Failure<HourlyWeather>(
                Name, $"It holds {Hours.Count} hours; a year has {TypicalCalendar.Hours}.", "Give at least a full year of hours, or monthly normals.");
        }

        var year = new WeatherHour[TypicalCalendar.Hours];
        for (var hour = 0; hour < Hours.Count; hour++) year[TypicalCalendar.IndexOf(Start.PlusHours(hour))] = Hours[hour];
        return ResultOf.Success(this with
        {
            Start = TypicalCalendar.NominalStart,
            Hours = year,
            Typical = true,
            Notes = [.. Notes, $"One real year ({Say(Start)} to {Say(End)}) stands for every year."],
        });
    }

    internal static int HoursBetween(LocalDateTime from, LocalDateTime to) => (int)Period.Between(from, to, PeriodUnits.Hours).Hours;

    internal static string Say(LocalDateTime time) => time.ToString("d MMMM uuuu H:mm", System.Globalization.CultureInfo.InvariantCulture);

    private WeatherHour[] TypicalHours(LocalDateTime start, int hours)
    {
        var wanted = new WeatherHour[hours];
        for (var hour = 0; hour < hours; hour++) wanted[hour] = Hours[TypicalCalendar.IndexOf(start.PlusHours(hour))];
        return wanted;
    }
}
