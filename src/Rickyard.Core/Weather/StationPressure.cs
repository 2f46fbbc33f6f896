using Rickyard.Core.Air;

namespace Rickyard.Core.Weather;

/// <summary>Station pressure from height, for records that give none or one reduced to sea level (the curve is <see cref="StandardPressure"/>).</summary>
internal static class StationPressure
{
    private const double Lowest = -500, Highest = 9000;

    /// <summary>Usual pressure at a height. [Pa]</summary>
    /// <param name="metres">Above sea level, held within -500 to 9000. [m]</param>
    public static double At(double metres) => StandardPressure.AtElevation(Math.Clamp(metres, Lowest, Highest)).Pascals;

    /// <summary>Station pressure from pressure reduced to sea level. [Pa]</summary>
    public static double FromSeaLevel(double metres, double seaLevel) => At(metres) * seaLevel / StandardPressure.AtElevation(0).Pascals;
}
