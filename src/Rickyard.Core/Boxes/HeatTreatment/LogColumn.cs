namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>A column of a temperature log, understood from its header: the unit is the last word of it, the place the words before.</summary>
/// <param name="Index">Place in the row, from 0.</param>
/// <param name="Header">As written.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Scale">From its number to seconds or, of a temperature, to kelvins.</param>
internal sealed record LogColumn(int Index, string Header, LogColumnKind Kind, double Scale = 1)
{
    private const double KelvinsPerFahrenheit = 1 / 1.8;
    private static readonly char[] Gaps = [' ', '_', '-', '.', ',', ':', '/', '(', ')', '[', ']'];
    private static readonly HashSet<string> Clocks = ["time", "datetime", "timestamp", "clock", "elapsed", "uhrzeit", "zeit"];
    private static readonly HashSet<string> Airs = ["air", "ambient", "box", "chamber", "oven", "kiln", "cabinet", "room"];
    private static readonly HashSet<string> Elsewhere = ["outside", "outdoor", "outdoors", "dew", "wet", "set", "setpoint", "heater", "exhaust", "surface", "shell", "wall"];
    private static readonly HashSet<string> Beside =
        ["#", "no", "nr", "index", "record", "event", "note", "notes", "comment", "battery", "status", "%", "rh", "v", "mv", "w", "kw", "kwh", "a", "hpa", "humidity"];

    /// <summary>From °C or °F.</summary>
    public double Celsius(double number) => Scale < 1 ? (number - 32) * Scale : number;

    /// <summary>Understands a header.</summary>
    public static LogColumn Parse(string header, int index)
    {
        var words = header.ToLowerInvariant().Replace("°", "", StringComparison.Ordinal).Replace("deg", "", StringComparison.Ordinal).Split(Gaps, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return new(index, header, LogColumnKind.Other);
        if (Degree(words[^1]) is { } degree) return new(index, header, PlaceOf(words), degree);
        if (words[0] is "date" or "datum" && !words.Contains("time")) return new(index, header, LogColumnKind.Date);
        var isTime = words.Any(Clocks.Contains) || words[0] is "date";
        if (SecondsPer(words[^1]) is { } seconds && (isTime || words.Length == 1)) return new(index, header, LogColumnKind.Elapsed, seconds);
        if (isTime) return new(index, header, LogColumnKind.Clock);
        return new(index, header, words.Any(Beside.Contains) ? LogColumnKind.Other : LogColumnKind.Unknown);
    }

    private static LogColumnKind PlaceOf(string[] words) =>
        words.Any(Elsewhere.Contains) ? LogColumnKind.Other : words.Any(Airs.Contains) ? LogColumnKind.Air : LogColumnKind.Wood;

    private static double? Degree(string unit) => unit switch
    {
        "c" or "celsius" or "℃" => 1,
        "f" or "fahrenheit" or "℉" => KelvinsPerFahrenheit,
        _ => null,
    };

    private static double? SecondsPer(string unit) => unit switch
    {
        "s" or "sec" or "secs" or "second" or "seconds" => 1,
        "min" or "mins" or "minute" or "minutes" => 60,
        "h" or "hr" or "hrs" or "hour" or "hours" => 3600,
        _ => null,
    };
}
