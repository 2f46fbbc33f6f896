using System.Globalization;
using System.Reflection;
using System.Text;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>The places whose monthly normals come with the program (Data/normals.csv names every source and its terms).</summary>
public static class NormalsCatalogue
{
    private const double EarthRadiusKilometres = 6371;
    private static readonly Lazy<IReadOnlyList<MonthlyNormals>> Loaded = new(Load);

    /// <summary>All places, in the order of the table.</summary>
    public static IReadOnlyList<MonthlyNormals> Places => Loaded.Value;

    /// <summary>
    /// The place a person means: city alone, or city with region, state letters or country, in any case, with or without accents and punctuation.
    /// A name that fits several places, or none, is a problem that lists what was meant perhaps.
    /// </summary>
    public static Result<MonthlyNormals> Find(string name)
    {
        var wanted = PlaceName.Parse(name);
        var fitting = Places.Where(wanted.Fits).ToList();
        if (fitting.Count == 1) return ResultOf.Success(fitting[0]);
        return fitting.Count > 1
            ? ResultOf.Failure<MonthlyNormals>("place", $"'{name}' fits {fitting.Count} places.", $"Say which: {Listed(fitting)}.")
            : ResultOf.Failure<MonthlyNormals>(
                "place",
                $"No monthly normals for '{name}' ({Places.Count} places are known).",
                $"Did you mean {Listed(Places.OrderBy(wanted.Unlikeness).Take(4))}? Otherwise name the nearest known place, or give a weather file.");
    }

    /// <summary>The known place nearest to a position, and how far away it is. [km]</summary>
    /// <param name="latitude">North positive. [°]</param>
    /// <param name="longitude">East positive. [°]</param>
    /// <param name="withRain">Only places whose rain is known.</param>
    public static (MonthlyNormals Place, double Kilometres) Nearest(double latitude, double longitude, bool withRain = false) => Places
        .Where(place => !withRain || place.RainKnown)
        .Select(place => (Place: place, Kilometres: Distance(place, latitude, longitude)))
        .MinBy(found => found.Kilometres);

    /// <summary>Great-circle distance of a place from a position (haversine). [km]</summary>
    internal static double Distance(MonthlyNormals place, double latitude, double longitude)
    {
        double north = Radians(latitude - place.Latitude), east = Radians(longitude - place.Longitude);
        var half = Math.Pow(Math.Sin(north / 2), 2) + Math.Cos(Radians(latitude)) * Math.Cos(Radians(place.Latitude)) * Math.Pow(Math.Sin(east / 2), 2);
        return 2 * EarthRadiusKilometres * Math.Asin(Math.Sqrt(Math.Min(1, half)));
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static string Listed(IEnumerable<MonthlyNormals> places) => string.Join("; ", places.Select(place => place.Name));

    private static List<MonthlyNormals> Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Rickyard.Core.Weather.Data.normals.csv")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var rows = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => line[0] != '#').Skip(1).Select(line => DelimitedLine.Split(line, ','));
        return [.. rows.Chunk(12).Select(Place)];
    }

    private static MonthlyNormals Place(string[][] months) => new(
        months[0][0], months[0][1], months[0][2], Number(months[0][3]), Number(months[0][4]), Number(months[0][5]), [.. months.Select(Month)], months[0][13]);

    private static NormalMonth Month(string[] row) => new(
        Number(row[7]), Number(row[8]), Number(row[9]) / 100, Number(row[10]), NumberOrNull(row[11]), NumberOrNull(row[12]));

    private static double? NumberOrNull(string text) => text.Length == 0 ? null : Number(text);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
