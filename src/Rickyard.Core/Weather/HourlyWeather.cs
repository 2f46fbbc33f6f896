using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Hour after hour of weather at one place, complete and in range, in local standard time.</summary>
/// <param name="Name">Place as a person would say it.</param>
/// <param name="Latitude">North positive. [°]</param>
/// <param name="Longitude">East positive. [°]</param>
/// <param name="ElevationMetres">Above sea level. [m]</param>
/// <param name="Start">When the first hour begins.</param>
/// <param name="Hours">The hours, in order and without holes.</param>
/// <param name="Notes">What was filled, clamped or supposed, each a sentence a person can read.</param>
/// <param name="Source">Where the numbers come from and on what terms.</param>
public sealed record HourlyWeather(
    string Name,
    double Latitude,
    double Longitude,
    double ElevationMetres,
    LocalDateTime Start,
    IReadOnlyList<WeatherHour> Hours,
    IReadOnlyList<string> Notes,
    string Source);
