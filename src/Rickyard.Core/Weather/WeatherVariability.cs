namespace Rickyard.Core.Weather;

/// <summary>
/// How much days differ from the usual of their date, as a multiple of what hourly records show (physics.md, eq. M8 to M11).
/// Wet days and their depths are drawn in any case.
/// </summary>
/// <param name="Temperature">Multiple of the spread of daily mean temperature.</param>
/// <param name="Humidity">Multiple of the spread of daily mean relative humidity, wet days included.</param>
/// <param name="Wind">Multiple of the spread of the logarithm of daily mean wind.</param>
public readonly record struct WeatherVariability(double Temperature, double Humidity, double Wind)
{
    /// <summary>As in the records.</summary>
    public static WeatherVariability Usual { get; } = new(1, 1, 1);

    /// <summary>Every day the usual of its date; only rain is drawn.</summary>
    public static WeatherVariability None { get; } = new(0, 0, 0);
}
