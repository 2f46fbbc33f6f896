namespace Rickyard.Core.Weather;

/// <summary>Pressure against height (ICAO standard atmosphere below 11 km).</summary>
internal static class StandardAtmosphere
{
    /// <summary>Usual pressure at a height. [Pa]</summary>
    /// <param name="metres">Above sea level. [m]</param>
    public static double Pressure(double metres) => Pressure(metres, 101325);

    /// <summary>Station pressure from pressure reduced to sea level. [Pa]</summary>
    public static double Pressure(double metres, double seaLevel) => seaLevel * Math.Pow(1 - 2.25577e-5 * Math.Clamp(metres, -500, 9000), 5.25588);
}
