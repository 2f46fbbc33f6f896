using System.Globalization;

namespace Rickyard.Core.Weather;

/// <summary>What stands before the header of a table: position and time offset, as Open-Meteo, PVGIS and weather services write them.</summary>
/// <param name="Site">Position, where it is given.</param>
/// <param name="UtcOffsetHours">Offset of the times from UTC; null: not said. [h]</param>
/// <param name="HeaderIndex">Index of the header line.</param>
internal sealed record TablePreamble(WeatherSite Site, double? UtcOffsetHours, int HeaderIndex)
{
    private const int LinesSearched = 80;

    /// <summary>Finds the header: the first line that names times and temperatures; null when there is none.</summary>
    public static TablePreamble? Find(string[] lines)
    {
        for (var index = 0; index < Math.Min(lines.Length, LinesSearched); index++)
        {
            if (!TableHeader.Parse(lines[index]).Useful) continue;
            var before = lines[..index];
            return new(Metadata(before) ?? Labelled(before), OffsetOf(before), index);
        }

        return null;
    }

    /// <summary>A header line of metadata with its values on the next line (Open-Meteo).</summary>
    private static WeatherSite? Metadata(string[] lines)
    {
        var values = Pairs(lines);
        return values is null
            ? null
            : Placed("Open-Meteo grid cell", Number(values, "latitude"), Number(values, "longitude"), Number(values, "elevation"));
    }

    private static double? OffsetOf(string[] lines) => Pairs(lines) is { } values && Number(values, "utc_offset_seconds") is { } seconds ? seconds / 3600 : null;

    private static Dictionary<string, string>? Pairs(string[] lines)
    {
        var at = Array.FindIndex(lines, line => line.Contains("latitude,longitude", StringComparison.OrdinalIgnoreCase));
        if (at < 0 || at + 1 >= lines.Length) return null;
        var names = DelimitedLine.Split(lines[at], ',');
        var values = DelimitedLine.Split(lines[at + 1], ',');
        return names.Zip(values).GroupBy(pair => pair.First).ToDictionary(pair => pair.Key, pair => pair.First().Second);
    }

    /// <summary>Lines such as "Latitude (decimal degrees): 45.000" or "Latitude:53.43,Longitude:-6.24" (PVGIS, Met Éireann).</summary>
    private static WeatherSite Labelled(string[] lines)
    {
        var parts = lines.SelectMany(line => line.Split([',', ';'])).Select(part => part.Split(':', 2, StringSplitOptions.TrimEntries)).Where(part => part.Length == 2).ToArray();
        double? Labelled(string label) => parts.Where(part => part[0].StartsWith(label, StringComparison.OrdinalIgnoreCase)).Select(part => Number(part[1])).FirstOrDefault(value => value is not null);
        var name = Array.Find(parts, part => part[0].StartsWith("Station Name", StringComparison.OrdinalIgnoreCase))?[1];
        return Placed(name, Labelled("Latitude"), Labelled("Longitude"), Labelled("Elevation") ?? Labelled("Station Height"));
    }

    /// <summary>A position only where latitude and longitude can be such.</summary>
    private static WeatherSite Placed(string? name, double? latitude, double? longitude, double? elevation) =>
        latitude is >= -90 and <= 90 && longitude is >= -180 and <= 180 ? new(name, latitude, longitude, elevation) : new(name, ElevationMetres: elevation);

    private static double? Number(Dictionary<string, string> values, string key) => values.TryGetValue(key, out var text) ? Number(text) : null;

    private static double? Number(string text) => double.TryParse(text.Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
}
