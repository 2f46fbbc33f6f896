using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// The weather of a forecast: what has been measured so far, and after it (and before it) years as they may come, one for each member of an
/// ensemble. The same member always gets the same weather.
/// </summary>
public sealed class WeatherScenario
{
    private readonly HourlyWeather? _observed;
    private readonly HourlyWeather? _typical;
    private readonly MonthlyNormals? _normals;

    private WeatherScenario(HourlyWeather? observed, HourlyWeather? typical, MonthlyNormals? normals)
    {
        _observed = observed;
        _typical = typical;
        _normals = normals;
    }

    /// <summary>Years ahead drawn from monthly normals (<see cref="SyntheticWeather"/>).</summary>
    /// <param name="normals">The climate.</param>
    /// <param name="observed">A real period, or null.</param>
    public static WeatherScenario FromNormals(MonthlyNormals normals, HourlyWeather? observed = null) => new(observed, null, normals);

    /// <summary>Years ahead like a typical year, or like one real year that stands for every year.</summary>
    /// <param name="typical">At least a full year.</param>
    /// <param name="observed">A real period, or null.</param>
    public static Result<WeatherScenario> FromTypicalYear(HourlyWeather typical, HourlyWeather? observed = null)
    {
        var year = typical.AsTypicalYear();
        return year.TryGet(out var whole) ? ResultOf.Success(new WeatherScenario(observed, whole, null)) : ResultOf.Failure<WeatherScenario>(year.Problems);
    }

    /// <summary>
    /// The middle of what may come: the typical year as it stands; or, from normals, days that are the usual of their date (rain drawn).
    /// </summary>
    /// <param name="start">When the first hour begins, on the full hour.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    public HourlyWeather Usual(LocalDateTime start, int hours) => Joined(
        _typical?.Window(start, hours).Value ?? SyntheticWeather.Year(_normals!, 0, start, hours, WeatherVariability.None), start, hours);

    /// <summary>One way the weather may go.</summary>
    /// <param name="seed">Number of the member; decides everything drawn.</param>
    /// <param name="start">When the first hour begins, on the full hour.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    public HourlyWeather Member(int seed, LocalDateTime start, int hours) => Joined(
        _typical is null ? SyntheticWeather.Year(_normals!, seed, start, hours) : TypicalYearResampling.Draw(_typical, seed, start, hours), start, hours);

    /// <summary>Real hours where there are any, other hours elsewhere.</summary>
    /// <param name="observed">A real period, or null.</param>
    /// <param name="ahead">A typical year, or a period that holds the whole span.</param>
    /// <param name="start">When the first hour begins, on the full hour.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    public static Result<HourlyWeather> Join(HourlyWeather? observed, HourlyWeather ahead, LocalDateTime start, int hours)
    {
        var window = ahead.Window(start, hours);
        if (observed is null || !window.TryGet(out var whole)) return window;
        var shift = HourlyWeather.HoursBetween(observed.Start, start);
        var (from, to) = (Math.Clamp(-shift, 0, hours), Math.Clamp(observed.Hours.Count - shift, 0, hours));
        if (from >= to) return ResultOf.Success(whole with { Notes = [.. whole.Notes, $"The measured weather of {observed.Name} lies outside the span and is not used."] });
        return ResultOf.Success(whole with
        {
            Name = observed.Name,
            Hours = [.. Enumerable.Range(0, hours).Select(hour => hour >= from && hour < to ? observed.Hours[hour + shift] : whole.Hours[hour])],
            Notes = [.. observed.Notes, .. whole.Notes, $"Measured weather from {HourlyWeather.Say(start.PlusHours(from))} to {HourlyWeather.Say(start.PlusHours(to))}, otherwise years as they may come."],
            Source = $"{observed.Source} {whole.Source}",
        });
    }

    private HourlyWeather Joined(HourlyWeather ahead, LocalDateTime start, int hours) => Join(_observed, ahead, start, hours).Value!;
}
