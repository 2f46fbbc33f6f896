using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>Reads any weather file we know, told apart by what is in it, never by its name.</summary>
public static class WeatherReader
{
    /// <summary>Complete hourly weather from the text of a file; every problem names the file and, where it can, the line.</summary>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="text">All of it (see <see cref="WeatherText.Decode"/>).</param>
    /// <param name="site">What the person says beyond the file.</param>
    public static Result<HourlyWeather> Read(string name, string text, WeatherSite? site = null)
    {
        if (site?.Problems().ToList() is { Count: > 0 } problems) return ResultOf.Failure<HourlyWeather>(problems);
        if (string.IsNullOrWhiteSpace(text)) return ResultOf.Failure<HourlyWeather>(name, "The file is empty.", Allowed);
        if (text.Contains('\0', StringComparison.Ordinal)) return ResultOf.Failure<HourlyWeather>(name, "It is not a text file.", Allowed);
        var first = text.TrimStart('\uFEFF', '\r', '\n', ' ').Split('\n', 2)[0].TrimEnd('\r');
        if (first.StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase)) return EpwReader.Read(name, text, site);
        if (IsdLiteReader.Recognises(first)) return IsdLiteReader.Read(name, text, site);
        if (first.Contains("FRSHTT", StringComparison.Ordinal)) return ResultOf.Failure<HourlyWeather>(
            name,
            "It is a GSOD daily file, which is not read.",
            "Give the station's hourly file (ISD-Lite), or its Daily Summaries.");
        return CsvWeatherReader.Read(name, text, site);
    }

    private const string Allowed = "Give an EPW file, a table of hourly weather with named columns, ISD-Lite, or daily highs, lows and rain.";
}
