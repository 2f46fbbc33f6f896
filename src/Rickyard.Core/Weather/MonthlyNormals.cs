using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>The usual weather of a place, month by month.</summary>
/// <param name="City">E.g. Des Moines.</param>
/// <param name="Region">State, county or province, e.g. Iowa.</param>
/// <param name="Country">E.g. United States.</param>
/// <param name="Latitude">North positive. [°]</param>
/// <param name="Longitude">East positive. [°]</param>
/// <param name="ElevationMetres">Above sea level. [m]</param>
/// <param name="Months">January to December.</param>
/// <param name="Source">Where the numbers come from, on what terms, and what is weak about them.</param>
public sealed record MonthlyNormals(
    string City,
    string Region,
    string Country,
    double Latitude,
    double Longitude,
    double ElevationMetres,
    IReadOnlyList<NormalMonth> Months,
    string Source)
{
    /// <summary>Depth from which a day counts as wet: 0.01 in. [mm]</summary>
    public const double WetDayMillimetres = 0.25;

    /// <summary>City and region.</summary>
    public string Name => Region.Length > 0 && Region != City ? $"{City}, {Region}" : City;

    /// <summary>Every month has rain and wet days.</summary>
    public bool RainKnown => Months.All(month => month.Rain is not null && month.WetDays is not null);

    /// <summary>Means over one year instead of about thirty: one year differs from the usual by itself.</summary>
    public bool OneYearOnly => Source.Contains("one year only", StringComparison.Ordinal) || Source.Contains("one typical year", StringComparison.Ordinal);

    /// <summary>The same climate with summer and winter exchanged.</summary>
    internal MonthlyNormals HalfAYearLater() => this with { Months = [.. Months.Skip(6), .. Months.Take(6)] };

    /// <summary>Monthly means of a full year of hours, so that own records can serve as normals.</summary>
    /// <param name="weather">At least a year.</param>
    public static Result<MonthlyNormals> FromHours(HourlyWeather weather)
    {
        var year = weather.AsTypicalYear();
        if (!year.TryGet(out var typical)) return ResultOf.Failure<MonthlyNormals>(year.Problems);
        var days = typical.Hours.Chunk(24)
            .Select((hours, day) => (Month: TypicalCalendar.MonthOf(day), Hours: hours))
            .ToLookup(day => day.Month, day => day.Hours);
        return ResultOf.Success(new MonthlyNormals(
            weather.Name, "", "", weather.Latitude, weather.Longitude, weather.ElevationMetres,
            [.. Enumerable.Range(0, 12).Select(month => Means([.. days[month]]))],
            $"Means over one year only of: {weather.Source}"));
    }

    private static NormalMonth Means(WeatherHour[][] days) => new(
        days.Average(day => day.Max(hour => hour.Celsius)),
        days.Average(day => day.Min(hour => hour.Celsius)),
        days.Average(day => day.Average(hour => hour.RelativeHumidity)),
        days.Average(day => day.Average(hour => hour.WindSpeed)),
        days.Sum(day => day.Sum(hour => hour.Rain)),
        days.Count(day => day.Sum(hour => hour.Rain) >= WetDayMillimetres));
}
