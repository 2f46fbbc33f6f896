using System.Globalization;

namespace Rickyard.Core.Weather;

/// <summary>Refuses values no outdoor station can have measured, keeps count, and afterwards says so. Refused values count as missing.</summary>
internal sealed class ReadingCheck
{
    /// <summary>Coldest and hottest accepted, ± this. [°C]</summary>
    public const double ExtremeCelsius = 70;

    /// <summary>Strongest hourly wind accepted. [m s⁻¹]</summary>
    public const double StrongestWind = 60;

    /// <summary>Relative humidity accepted and cut to 1.</summary>
    public const double DampestHumidity = 1.1;

    /// <summary>Most rain accepted in an hour; the record is about 300. [mm]</summary>
    public const double HeaviestRain = 310;

    private readonly Dictionary<string, (int Count, double First, int Line)> _refused = [];
    private int _cut;

    public double? Celsius(double? value, int line) => Within(value, -ExtremeCelsius, ExtremeCelsius, line, $"temperature outside ±{ExtremeCelsius} °C", 1);

    public double? Wind(double? value, int line) => Within(value, 0, StrongestWind, line, $"wind outside 0 to {StrongestWind} m/s", 1);

    public double? Rain(double? value, int line) => Within(value, 0, HeaviestRain, line, $"rain outside 0 to {HeaviestRain} mm in an hour", 1);

    public double? Sun(double? value, int line) => Within(value, 0, 1500, line, "sun outside 0 to 1500 W/m²", 1);

    public double? Pressure(double? value, int line) => Within(value, 31000, 120000, line, "pressure outside 310 to 1200 hPa", 0.01);

    public double? Humidity(double? value, int line)
    {
        var accepted = Within(value, 0, DampestHumidity, line, "relative humidity outside 0 to 110 %", 100);
        if (accepted > 1) _cut++;
        return accepted is { } humidity ? Math.Min(1, humidity) : null;
    }

    /// <summary>What was refused or cut, each a sentence.</summary>
    public IEnumerable<string> Notes()
    {
        if (_cut > 0) yield return $"Relative humidity of 100 to 110 % taken as 100 %, {Times(_cut)}.";
        foreach (var (what, refused) in _refused)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Refused as impossible and treated as missing, {Times(refused.Count)}: {what} (first {refused.First:0.#}, line {refused.Line}).");
        }
    }

    private double? Within(double? value, double low, double high, int line, string what, double shown)
    {
        if (value is not { } number || (number >= low && number <= high)) return value;
        var known = _refused.GetValueOrDefault(what, (Count: 0, First: number * shown, Line: line));
        _refused[what] = known with { Count = known.Count + 1 };
        return null;
    }

    private static string Times(int count) => count == 1 ? "once" : $"{count} times";
}
