using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>What a person says about a weather file that the file itself does not: where it was measured, and which station is meant.</summary>
/// <param name="Name">Place as a person would say it; null: as the file says.</param>
/// <param name="Latitude">North positive; null: as the file says. [°]</param>
/// <param name="Longitude">East positive; null: as the file says. [°]</param>
/// <param name="ElevationMetres">Above sea level; null: as the file says. [m]</param>
/// <param name="Station">Which station of a file that holds several; null: the first.</param>
public sealed record WeatherSite(
    string? Name = null, double? Latitude = null, double? Longitude = null, double? ElevationMetres = null, string? Station = null)
{
    /// <summary>Nothing said.</summary>
    public static WeatherSite Unknown { get; } = new();

    /// <summary>At one of the known places.</summary>
    public static WeatherSite At(MonthlyNormals place) => new(place.Name, place.Latitude, place.Longitude, place.ElevationMetres);

    /// <summary>Every problem with what is said; none when it can be used.</summary>
    public IEnumerable<Problem> Problems()
    {
        if (Latitude is { } north && north is not (>= -90 and <= 90)) yield return new(
            "latitude",
            $"A latitude of {north}° does not exist.",
            "Give -90 to 90, north positive.");
        if (Longitude is { } east && east is not (>= -180 and <= 180)) yield return new(
            "longitude",
            $"A longitude of {east}° does not exist.",
            "Give -180 to 180, east positive.");
        if (ElevationMetres is { } height && height is not (>= -430 and <= 6000)) yield return new(
            "elevation",
            $"No rack stands at {height} m.",
            "Give -430 to 6000 m above sea level.");
    }

    /// <summary>Latitude and longitude are known.</summary>
    internal bool Placed => Latitude is not null && Longitude is not null;

    /// <summary>What is said here, and where nothing is said, what the file says.</summary>
    internal WeatherSite Or(WeatherSite file) => new(
        Name ?? file.Name, Latitude ?? file.Latitude, Longitude ?? file.Longitude, ElevationMetres ?? file.ElevationMetres, Station ?? file.Station);
}
