using NodaTime;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Store;

/// <summary>The weather behind a name: hours from a file, or the monthly normals of a place. Exactly one is set.</summary>
/// <param name="Hours">What the file holds, gaps filled.</param>
/// <param name="Normals">The climate of the place.</param>
public sealed record NamedWeather(HourlyWeather? Hours, MonthlyNormals? Normals)
{
    /// <summary>
    /// One course of the weather. Normals give another year for each seed. A file gives its own hours where they hold the whole span; else, when
    /// it holds a full year, that year stands for the one wanted and a note says so.
    /// </summary>
    /// <param name="seed">Decides what is drawn from normals; means nothing for a file.</param>
    /// <param name="start">When the first hour begins, on the full hour.</param>
    /// <param name="hours">How many hours, at least 1.</param>
    public Result<HourlyWeather> Course(int seed, LocalDateTime start, int hours)
    {
        if (Hours is null) return ResultOf.Success(SyntheticWeather.Year(Normals!, seed, start, hours));
        var own = Hours.Window(start, hours);
        if (own.Value is not null) return own;
        return Hours.AsTypicalYear().TryGet(out var year) ? year.Window(start, hours) : own;
    }
}
