namespace Rickyard.Core.Weather;

/// <summary>Units a column may have, and how to come from them to ours.</summary>
internal static class ColumnUnits
{
    private const double Inch = 25.4;
    private const double InchOfMercury = 3386.389;

    /// <summary>The units accepted for a role, for messages.</summary>
    public static string Allowed(ColumnRole role) => role switch
    {
        ColumnRole.RelativeHumidity => "%",
        ColumnRole.Wind => "m/s, km/h, mph or kn",
        ColumnRole.Rain => "mm, cm or in",
        ColumnRole.Sun => "W/m²",
        ColumnRole.StationPressure or ColumnRole.SeaLevelPressure => "hPa, Pa, kPa or inHg",
        _ => "°C, °F or K",
    };

    /// <summary>Conversion to °C, fraction, m/s, mm, W/m² or Pa; null for a unit we do not know.</summary>
    public static Func<double, double>? Conversion(ColumnRole role, string unit)
    {
        var lower = unit.ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal);
        var plain = lower.Replace("deg", "", StringComparison.Ordinal).Replace("°", "", StringComparison.Ordinal);
        return role switch
        {
            ColumnRole.RelativeHumidity => Humidity(plain),
            ColumnRole.Wind => Wind(plain),
            ColumnRole.Rain => Rain(plain),
            ColumnRole.Sun => plain is "w/m2" or "w/m²" or "wm2" or "wm-2" or "w/m^2" ? value => value : null,
            ColumnRole.StationPressure or ColumnRole.SeaLevelPressure => Pressure(plain),
            _ => Temperature(plain),
        };
    }

    private static Func<double, double>? Temperature(string unit) => unit switch
    {
        "c" or "celsius" or "℃" => value => value,
        "f" or "fahrenheit" or "℉" => value => (value - 32) / 1.8,
        "k" or "kelvin" => value => value - Quantities.Temperature.IcePointKelvins,
        _ => null,
    };

    private static Func<double, double>? Humidity(string unit) => unit switch
    {
        "%" or "percent" or "pct" or "%rh" or "rh" => value => value / 100,
        _ => null,
    };

    private static Func<double, double>? Wind(string unit) => unit switch
    {
        "m/s" or "ms" or "mps" or "ms-1" or "m/sec" => value => value,
        "km/h" or "kmh" or "kph" or "kmph" => value => value / 3.6,
        "mph" or "mi/h" or "mp/h" => value => value * 0.44704,
        "kt" or "kts" or "kn" or "knots" or "knot" => value => value * 1852 / 3600,
        _ => null,
    };

    private static Func<double, double>? Rain(string unit) => unit switch
    {
        "mm" or "l/m2" or "l/m²" or "kg/m2" => value => value,
        "cm" => value => value * 10,
        "in" or "inch" or "inches" or "\"" => value => value * Inch,
        _ => null,
    };

    private static Func<double, double>? Pressure(string unit) => unit switch
    {
        "hpa" or "mbar" or "mb" or "millibar" => value => value * 100,
        "pa" => value => value,
        "kpa" => value => value * 1000,
        "inhg" => value => value * InchOfMercury,
        _ => null,
    };
}
