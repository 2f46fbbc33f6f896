namespace Rickyard.Core.Weather;

/// <summary>
/// Global radiation where nobody measured it: extraterrestrial radiation of the day times what the daily range of temperature says about
/// clouds, spread over the day like the height of the sun (FAO Irrigation and Drainage Paper 56, eq. 21, 23-25, 37 and 50, from memory;
/// physics.md, eq. M5 and M6). Noon is taken at 12:00.
/// </summary>
public static class DailySun
{
    private const double SolarConstant = 1367;

    /// <summary>Between 0.16 (inland) and 0.19 (coast) of the source. [K^-0.5]</summary>
    private const double RangeFactor = 0.17;

    /// <summary>Mean global radiation of a day. [W m⁻²]</summary>
    /// <param name="latitude">North positive. [°]</param>
    /// <param name="elevationMetres">Above sea level. [m]</param>
    /// <param name="day">Day of the typical year, 0 to 364.</param>
    /// <param name="range">High minus low. [K]</param>
    public static double Mean(double latitude, double elevationMetres, int day, double range)
    {
        var clearest = 0.75 + 2e-5 * Math.Max(0, elevationMetres);
        return Math.Min(clearest, RangeFactor * Math.Sqrt(Math.Max(0, range))) * Extraterrestrial(latitude, day);
    }

    /// <summary>Mean of an hour over the mean of the day.</summary>
    /// <param name="latitude">North positive. [°]</param>
    /// <param name="day">Day of the typical year, 0 to 364.</param>
    /// <param name="hour">0 to 23, the hour that begins then.</param>
    public static double HourFactor(double latitude, int day, int hour)
    {
        var (noonPart, swing, sunset) = Geometry(latitude, day);
        var daily = DayIntegral(noonPart, swing, sunset);
        if (daily <= 0) return 0;
        double from = Math.Clamp(Math.PI * (hour - 12) / 12, -sunset, sunset), to = Math.Clamp(Math.PI * (hour - 11) / 12, -sunset, sunset);
        return 24 * (noonPart * (to - from) + swing * (Math.Sin(to) - Math.Sin(from))) / daily;
    }

    /// <summary>Mean radiation of the day on a horizontal face above the air. [W m⁻²]</summary>
    public static double Extraterrestrial(double latitude, int day)
    {
        var (noonPart, swing, sunset) = Geometry(latitude, day);
        var distance = 1 + 0.033 * Math.Cos(2 * Math.PI * (day + 1) / 365);
        return SolarConstant / (2 * Math.PI) * distance * DayIntegral(noonPart, swing, sunset);
    }

    private static double DayIntegral(double noonPart, double swing, double sunset) => 2 * (sunset * noonPart + swing * Math.Sin(sunset));

    private static (double NoonPart, double Swing, double Sunset) Geometry(double latitude, int day)
    {
        double phi = Math.Clamp(latitude, -89.9, 89.9) * Math.PI / 180, declination = 0.409 * Math.Sin(2 * Math.PI * (day + 1) / 365 - 1.39);
        var sunset = Math.Acos(Math.Clamp(-Math.Tan(phi) * Math.Tan(declination), -1, 1));
        return (Math.Sin(phi) * Math.Sin(declination), Math.Cos(phi) * Math.Cos(declination), sunset);
    }
}
