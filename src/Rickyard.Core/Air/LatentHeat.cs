using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>Heat taken up when water changes state (physics.md, eq. A7 and A8). Raw doubles: these sit inside kernels.</summary>
public static class LatentHeat
{
    /// <summary>Melting of ice at 0 °C: sublimation minus evaporation there. [J kg⁻¹]</summary>
    public const double OfFusion = 333.3e3;

    /// <summary>
    /// Evaporation of liquid water: a cubic fitted here to IAPWS-IF97, within 0.05 kJ/kg of it from 0 to 100 °C; over undercooled water
    /// 0.4 % below Murphy and Koop (2005) at -40 °C. [J kg⁻¹]
    /// </summary>
    /// <param name="kelvins">Temperature of the water, 233 to 393. [K]</param>
    public static double OfEvaporation(double kelvins)
    {
        var t = kelvins - Temperature.IcePointKelvins;
        return 1e3 * (2500.918 + t * (-2.375328 + t * (5.32091e-4 - 1.229916e-5 * t)));
    }

    /// <summary>Sublimation of ice (Murphy and Koop 2005, eq. 5). [J kg⁻¹]</summary>
    /// <param name="kelvins">Temperature of the ice, 30 to 273.15. [K]</param>
    public static double OfSublimation(double kelvins) =>
        (46782.5 + kelvins * (35.8925 - 0.07414 * kelvins) + 541.5 * Math.Exp(-Math.Pow(kelvins / 123.75, 2))) / WaterMolarMass;

    private const double WaterMolarMass = 18.01528e-3;
}
