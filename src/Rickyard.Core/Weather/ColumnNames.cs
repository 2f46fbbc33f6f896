using System.Text;
using System.Text.RegularExpressions;

namespace Rickyard.Core.Weather;

/// <summary>What the headers of home stations and open exports call their columns, best name first.</summary>
internal static partial class ColumnNames
{
    private static readonly Dictionary<ColumnRole, string[]> Names = new()
    {
        [ColumnRole.Time] =
        [
            "time hour", "datetime", "date time", "timestamp", "date utc", "dateutc", "time utc", "local time", "time local", "observation time", "valid",
            "date", "time", "datum", "zeit",
        ],
        [ColumnRole.Clock] = ["hour", "hr", "time", "uhrzeit"],
        [ColumnRole.Year] = ["year"],
        [ColumnRole.Month] = ["month"],
        [ColumnRole.Day] = ["day"],
        [ColumnRole.Station] = ["station", "origin", "location id", "station id", "site"],
        [ColumnRole.Temperature] =
        [
            "temperature 2m", "outdoor temperature", "air temperature", "outdoor temp", "temp outdoor", "temperature outdoor", "temp out", "out temp", "outtemp",
            "air temp", "dry bulb temperature", "dry bulb", "t2m", "tair", "temperature", "temp", "temperatur", "aussentemperatur", "tempf", "tempc",
        ],
        [ColumnRole.High] = ["tmax", "temp max", "temperature 2m max", "max temp", "max temperature", "high", "high temp"],
        [ColumnRole.Low] = ["tmin", "temp min", "temperature 2m min", "min temp", "min temperature", "low", "low temp"],
        [ColumnRole.DewPoint] =
            ["dew point 2m", "dewpoint 2m", "dew point", "dewpoint", "dew point temperature", "dewp", "dwpt", "dewpt", "taupunkt", "dewptf", "dewptc"],
        [ColumnRole.RelativeHumidity] =
        [
            "relative humidity 2m", "relativehumidity 2m", "outdoor humidity", "humidity outdoor", "out humidity", "outhumidity", "relative humidity",
            "rel humidity", "rh", "rhum", "humidity", "humid", "hum", "luftfeuchte", "luftfeuchtigkeit", "relative luftfeuchte",
        ],
        [ColumnRole.Wind] =
        [
            "wind speed 10m", "windspeed 10m", "ws10m", "avg wind speed", "average wind speed", "wind speed avg", "wind avg", "wind speed", "windspeed", "wspd",
            "wdsp", "awnd", "wind", "windgeschwindigkeit", "windspeedmph",
        ],
        [ColumnRole.Rain] =
            ["precipitation", "precipitation amount", "precip", "prcp", "rainfall", "rain", "rain amount", "niederschlag", "regen"],
        [ColumnRole.Sun] =
        [
            "shortwave radiation", "global radiation", "global horizontal radiation", "global horizontal irradiance", "ghi", "g h", "solar radiation",
            "solar rad", "solar irradiance", "solar", "globalstrahlung",
        ],
        [ColumnRole.StationPressure] = ["surface pressure", "station pressure", "absolute pressure", "pressure absolute", "sp"],
        [ColumnRole.SeaLevelPressure] =
            ["pressure msl", "msl", "sea level pressure", "relative pressure", "pressure relative", "pressure", "pres", "barometer", "luftdruck"],
    };

    /// <summary>Unit spellings that may close a header without parentheses, as in temp_c or wdsp_kt.</summary>
    private static readonly HashSet<string> ClosingUnits =
    [
        "c", "f", "k", "degc", "degf", "°c", "°f", "celsius", "fahrenheit", "percent", "pct", "%", "mm", "inch", "inches", "in", "kt", "kts", "knots", "kn", "mph",
        "kmh", "km/h", "kph", "m/s", "ms", "mps", "hpa", "mbar", "mb", "pa", "kpa", "inhg", "w/m2", "w/m²", "wm2", "utc", "z",
    ];

    /// <summary>How good a header is for a role: 0 is best; null is not at all.</summary>
    public static int? Rank(ColumnRole role, string name)
    {
        var rank = Array.IndexOf(Names[role], name);
        return rank < 0 ? null : rank;
    }

    /// <summary>The plain name and the unit of a header, e.g. "wind speed 10m" and "km/h"; null where it names none.</summary>
    public static (string Name, string? Unit) Parse(string header)
    {
        var text = header.Trim().Trim('"').ToLowerInvariant().Replace("ß", "ss", StringComparison.Ordinal);
        var bracket = Bracketed().Match(text);
        if (bracket.Success && Plain(bracket.Groups[1].Value) is { Length: > 1 } before) return (before, bracket.Groups[2].Value.Trim());
        var words = text.Split([' ', '_'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length > 1 && ClosingUnits.Contains(words[^1]) && words is not ["date" or "time", "utc"]
            ? (Plain(string.Join(' ', words[..^1])), words[^1])
            : Glued(Plain(text));
    }

    private static (string Name, string? Unit) Glued(string name) => name switch
    {
        "tempf" or "dewptf" => (name, "f"),
        "tempc" or "dewptc" => (name, "c"),
        "windspeedmph" => (name, "mph"),
        _ => (name, null),
    };

    private static string Plain(string text)
    {
        var letters = new StringBuilder();
        foreach (var letter in text) letters.Append(char.IsLetterOrDigit(letter) ? letter : ' ');
        return string.Join(' ', letters.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    [GeneratedRegex(@"^(.*?)[\s_]*[\(\[]([^\)\]]*)[\)\]]\s*$")]
    private static partial Regex Bracketed();
}
