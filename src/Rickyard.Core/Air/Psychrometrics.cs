using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>
/// The equations of moist air as an ideal mixture (ASHRAE Handbook Fundamentals 2017, ch. 1; physics.md, eq. A4 to A6). Real saturated
/// air holds 0.5 % more vapour at 25 °C and 1.2 % more at 85 °C. Raw doubles: these sit inside kernels; <see cref="MoistAir"/> is the typed door.
/// </summary>
public static class Psychrometrics
{
    /// <summary>Vapour over dry air (eq. 20). [kg kg⁻¹]</summary>
    /// <param name="vaporPressure">Below the total pressure. [Pa]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double HumidityRatio(double vaporPressure, double pressure) =>
        AirConstants.MolarMassRatio * vaporPressure / (pressure - vaporPressure);

    /// <summary>Partial pressure of the vapour: the inverse of <see cref="HumidityRatio"/>. [Pa]</summary>
    /// <param name="humidityRatio">Vapour over dry air. [kg kg⁻¹]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double VaporPressure(double humidityRatio, double pressure) =>
        pressure * humidityRatio / (AirConstants.MolarMassRatio + humidityRatio);

    /// <summary>Enthalpy of air with its vapour, zero for dry air and liquid water at 0 °C (eq. 30). [J per kg of dry air]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="humidityRatio">Vapour over dry air. [kg kg⁻¹]</param>
    public static double Enthalpy(double kelvins, double humidityRatio)
    {
        var t = kelvins - Temperature.IcePointKelvins;
        return AirConstants.DryAirHeatCapacity * t + humidityRatio * (2501e3 + AirConstants.VaporHeatCapacity * t);
    }

    /// <summary>Volume of air with its vapour (eq. 26). [m³ per kg of dry air]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="humidityRatio">Vapour over dry air. [kg kg⁻¹]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double SpecificVolume(double kelvins, double humidityRatio, double pressure) =>
        AirConstants.DryAirGasConstant * kelvins * (1 + humidityRatio / AirConstants.MolarMassRatio) / pressure;

    /// <summary>Heat capacity of air with its vapour. [J K⁻¹ per kg of dry air]</summary>
    /// <param name="humidityRatio">Vapour over dry air. [kg kg⁻¹]</param>
    public static double HeatCapacity(double humidityRatio) => AirConstants.DryAirHeatCapacity + AirConstants.VaporHeatCapacity * humidityRatio;

    /// <summary>
    /// Humidity ratio from dry bulb and thermodynamic wet bulb (eq. 33 over water, eq. 35 over ice when the wet bulb is below 0 °C).
    /// Below zero when the pair is impossible: not even bone-dry air cools a wick so far. [kg kg⁻¹]
    /// </summary>
    /// <param name="kelvins">Dry bulb. [K]</param>
    /// <param name="wetBulbKelvins">Wet bulb, below the boiling point at this pressure. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double HumidityRatioFromWetBulb(double kelvins, double wetBulbKelvins, double pressure) =>
        wetBulbKelvins < Temperature.IcePointKelvins ? OverIce(kelvins, wetBulbKelvins, pressure) : OverWater(kelvins, wetBulbKelvins, pressure);

    /// <summary>
    /// Wet bulb of air. The wick is water where a wet wick can be at or above 0 °C, else ice: in a narrow band (wet bulb within about 0.7 K
    /// of 0 °C) both readings are possible and the liquid one is returned. Found by bisection to 1e-9 K. [K]
    /// </summary>
    /// <param name="kelvins">Dry bulb. [K]</param>
    /// <param name="humidityRatio">Vapour over dry air. [kg kg⁻¹]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double WetBulb(double kelvins, double humidityRatio, double pressure) =>
        OverWater(kelvins, Temperature.IcePointKelvins, pressure) <= humidityRatio + Rounding
            ? Bisect(wick => OverWater(kelvins, wick, pressure) - humidityRatio, Temperature.IcePointKelvins, kelvins + 1)
            : Bisect(wick => OverIce(kelvins, wick, pressure) - humidityRatio, Math.Min(173.15, kelvins - 5), Temperature.IcePointKelvins);

    // Keeps air saturated at exactly 0 °C on the liquid side.
    private const double Rounding = 1e-12;

    private static double OverWater(double kelvins, double wick, double pressure)
    {
        double t = kelvins - Temperature.IcePointKelvins, w = wick - Temperature.IcePointKelvins;
        return ((2501 - 2.326 * w) * Saturated(SaturationPressure.OverWater(wick), pressure) - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w);
    }

    private static double OverIce(double kelvins, double wick, double pressure)
    {
        double t = kelvins - Temperature.IcePointKelvins, w = wick - Temperature.IcePointKelvins;
        return ((2830 - 0.24 * w) * Saturated(SaturationPressure.OverIce(wick), pressure) - 1.006 * (t - w)) / (2830 + 1.86 * t - 2.1 * w);
    }

    private static double Saturated(double saturationPressure, double pressure) =>
        saturationPressure < pressure ? HumidityRatio(saturationPressure, pressure) : double.PositiveInfinity;

    private static double Bisect(Func<double, double> excess, double low, double high)
    {
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            if (excess(middle) > 0) high = middle; else low = middle;
        }

        return (low + high) / 2;
    }
}
