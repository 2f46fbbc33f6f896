using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>
/// Saturation pressure of water vapour over liquid water and over ice, -100 to 200 °C (Hyland and Wexler 1983, as printed in
/// ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 and 6; physics.md, eq. A1 and A2). Raw doubles: these sit inside kernels.
/// </summary>
public static class SaturationPressure
{
    /// <summary>Over liquid water, also below 0 °C (undercooled). [Pa]</summary>
    /// <param name="kelvins">Temperature, 173 to 473. [K]</param>
    public static double OverWater(double kelvins) => Math.Exp(
        -5.8002206e3 / kelvins + 1.3914993 + kelvins * (-4.8640239e-2 + kelvins * (4.1764768e-5 - 1.4452093e-8 * kelvins)) + 6.5459673 * Math.Log(kelvins));

    /// <summary>Over ice. [Pa]</summary>
    /// <param name="kelvins">Temperature, 173 to 273.15. [K]</param>
    public static double OverIce(double kelvins) => Math.Exp(
        -5.6745359e3 / kelvins + 6.3925247 + kelvins * (-9.677843e-3 + kelvins * (6.2215701e-7 + kelvins * (2.0747825e-9 - 9.484024e-13 * kelvins)))
        + 4.1635019 * Math.Log(kelvins));

    /// <summary>Over ice below 0 °C, over water from there up. [Pa]</summary>
    public static double Of(double kelvins) => kelvins < Temperature.IcePointKelvins ? OverIce(kelvins) : OverWater(kelvins);

    /// <summary>d p_sat / dT of <see cref="Of"/>. [Pa K⁻¹]</summary>
    public static double Slope(double kelvins) => kelvins < Temperature.IcePointKelvins ? SlopeOverIce(kelvins) : SlopeOverWater(kelvins);

    /// <summary>Temperature at which <see cref="Of"/> has the given value: the dew point, or the frost point below 611 Pa. [K]</summary>
    /// <param name="pascals">Vapour pressure; held within 1e-3 to 1.5e6. [Pa]</param>
    public static double Inverse(double pascals) => Solve(pascals, Of, Slope);

    /// <summary>Temperature at which <see cref="OverWater"/> has the given value: the dew point over (undercooled) water. [K]</summary>
    /// <param name="pascals">Vapour pressure; held within 1e-3 to 1.5e6. [Pa]</param>
    public static double InverseOverWater(double pascals) => Solve(pascals, OverWater, SlopeOverWater);

    // Newton on ln p, which is nearly linear in 1/T; the first guess is a straight line in 1/T through the ice point.
    private static double Solve(double pascals, Func<double, double> pressure, Func<double, double> slope)
    {
        var logarithm = Math.Log(Math.Clamp(pascals, 1e-3, 1.5e6));
        var kelvins = 5400 / (5400 / Temperature.IcePointKelvins - (logarithm - 6.4157));
        for (var iteration = 0; iteration < 50; iteration++)
        {
            var value = pressure(kelvins);
            var step = (Math.Log(value) - logarithm) * value / slope(kelvins);
            kelvins -= step;
            if (Math.Abs(step) < 1e-10 * kelvins) break;
        }

        return kelvins;
    }

    private static double SlopeOverWater(double kelvins) => OverWater(kelvins) * (
        5.8002206e3 / (kelvins * kelvins) - 4.8640239e-2 + kelvins * (2 * 4.1764768e-5 - 3 * 1.4452093e-8 * kelvins) + 6.5459673 / kelvins);

    private static double SlopeOverIce(double kelvins) => OverIce(kelvins) * (
        5.6745359e3 / (kelvins * kelvins) - 9.677843e-3 + kelvins * (2 * 6.2215701e-7 + kelvins * (3 * 2.0747825e-9 - 4 * 9.484024e-13 * kelvins))
        + 4.1635019 / kelvins);
}
