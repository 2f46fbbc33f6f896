using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>
/// Hours of any length from monthly normals: a published shape of the day, drawn rain, and days that differ from the usual with memory from
/// one to the next (physics.md, eq. M1 to M11). The same seed gives the same weather; other seeds give other years of one climate.
/// </summary>
public static class SyntheticWeather
{
    /// <summary>One year, or any other span, of weather as it may come.</summary>
    /// <param name="normals">The climate; where its rain is not known it is borrowed (see <see cref="RainSource"/>), and a note says so.</param>
    /// <param name="seed">Decides everything drawn.</param>
    /// <param name="start">When the first hour begins, on the full hour; any year.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    /// <param name="variability">How much days differ; default as in records.</param>
    public static HourlyWeather Year(MonthlyNormals normals, int seed, LocalDateTime start, int hours, WeatherVariability? variability = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hours);
        var rain = RainSource.For(normals);
        var days = new SyntheticDays(normals, rain.Normals, seed, variability ?? WeatherVariability.Usual);
        var count = (start.Hour + hours + 23) / 24;
        var drawn = days.Draw(start.Date, count);
        var spread = DaysToHours.Spread(start.Date, drawn, normals.Latitude, StationPressure.At(normals.ElevationMetres));
        return new(
            normals.Name, normals.Latitude, normals.Longitude, normals.ElevationMetres, start,
            [.. spread.Skip(start.Hour).Take(hours)], Notes(normals, rain), normals.Source);
    }

    /// <summary>Rain alone, for filling gaps. [mm in each hour]</summary>
    internal static double[] Rain(MonthlyNormals normals, int seed, LocalDateTime start, int hours)
    {
        var chain = new WetDayChain(normals, seed);
        var count = (start.Hour + hours + 23) / 24;
        var drawn = Enumerable.Range(0, count).SelectMany(day => chain.NextDay(start.Date.PlusDays(day).Month - 1));
        return [.. drawn.Skip(start.Hour).Take(hours)];
    }

    private static string[] Notes(MonthlyNormals normals, RainSource rain)
    {
        List<string> notes = [$"Drawn from the monthly normals of {normals.Name}: how days usually are and differ, not a forecast of this year."];
        if (normals.OneYearOnly) notes.Add($"The normals of {normals.Name} are the means of one year only.");
        if (!normals.RainKnown) notes.Add(rain.Note);
        return [.. notes];
    }
}
