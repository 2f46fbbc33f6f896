namespace Rickyard.Core.Weather;

/// <summary>
/// Whose rain stands in where a file or a table has none: the place itself; else the nearest known place within 500 km; else the known place
/// whose months are most alike in temperature, daily range and humidity (half a year shifted across the equator), which is a guess and says so.
/// </summary>
/// <param name="Normals">Whose rain, seasons already turned.</param>
/// <param name="Note">What was done, as a sentence.</param>
public sealed record RainSource(MonthlyNormals Normals, string Note)
{
    /// <summary>How far away a place may be to count as near. [km]</summary>
    public const double NearKilometres = 500;

    /// <summary>The stand-in for a climate.</summary>
    public static RainSource For(MonthlyNormals climate) => climate.RainKnown
        ? new(climate, $"Rain is that of {climate.Name}.")
        : Near(climate.Latitude, climate.Longitude) ?? Alike(climate);

    /// <summary>The nearest place with known rain, or null when it is farther than <see cref="NearKilometres"/>.</summary>
    /// <param name="latitude">North positive. [°]</param>
    /// <param name="longitude">East positive. [°]</param>
    public static RainSource? Near(double latitude, double longitude)
    {
        var (near, kilometres) = NormalsCatalogue.Nearest(latitude, longitude, withRain: true);
        return kilometres <= NearKilometres ? new(near, Nearby(near, kilometres)) : null;
    }

    /// <summary>The place with known rain whose months are most alike: a guess.</summary>
    public static RainSource Alike(MonthlyNormals climate)
    {
        var alike = NormalsCatalogue.Places.Where(place => place.RainKnown).MinBy(place => Unlikeness(climate, InSeason(place, climate)))!;
        var kilometres = NormalsCatalogue.Distance(alike, climate.Latitude, climate.Longitude);
        return new(InSeason(alike, climate), FormattableString.Invariant(
            $"Rain is a guess: no place with known rain lies within {NearKilometres:0} km, so it is drawn from {alike.Name} ({kilometres:0} km away), whose months are most alike in temperature and humidity; give a file with rain to do better."));
    }

    private static string Nearby(MonthlyNormals near, double kilometres) => FormattableString.Invariant(
        $"Rain is drawn from the monthly normals of {near.Name}, the nearest known place, {kilometres:0} km away ({near.Source}).");

    private static MonthlyNormals InSeason(MonthlyNormals place, MonthlyNormals climate) =>
        place.Latitude * climate.Latitude < 0 ? place.HalfAYearLater() : place;

    /// <summary>Squared differences of monthly high and low, each over 4 K, and of humidity, over 10 points.</summary>
    private static double Unlikeness(MonthlyNormals left, MonthlyNormals right) => left.Months.Zip(right.Months).Sum(pair =>
        Math.Pow((pair.First.HighCelsius - pair.Second.HighCelsius) / 4, 2)
        + Math.Pow((pair.First.LowCelsius - pair.Second.LowCelsius) / 4, 2)
        + Math.Pow((pair.First.RelativeHumidity - pair.Second.RelativeHumidity) / 0.1, 2));
}
