namespace Rickyard.Core.Weather;

/// <summary>Relative humidity from what a station gives instead.</summary>
internal static class Humidity
{
    /// <summary>From the dew point, which above the air temperature is taken as equal to it; over water also below 0 °C. 0 to 1.</summary>
    public static double? FromDewPoint(double? celsius, double? dewPoint) => celsius is { } air && dewPoint is { } dew
        ? DayShape.RelativeHumidity(air, DayShape.SaturationOverWater(Math.Min(air, dew)))
        : null;
}
