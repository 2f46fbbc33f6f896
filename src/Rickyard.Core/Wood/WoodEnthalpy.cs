using Rickyard.Core.Air;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>
/// Heat content of moist wood as a function of state: zero for oven-dry wood and liquid water at 0 °C, apart from the heat of wetting that bound water has already
/// given off (physics.md, eq. W7b). Its slope by temperature is <see cref="WoodThermal.HeatCapacity"/>, and in the kelvin below 0 °C the melting of free water.
/// </summary>
public static class WoodEnthalpy
{
    /// <summary>Free water freezes over this span below 0 °C: pores of unlike width (judgement; keeps the function smooth enough to invert). [K]</summary>
    public const double FreezingSpan = 1;

    private const double ColdestBond = 280, HottestBond = 420, Zero = Temperature.IcePointKelvins;

    /// <summary>Heat content but for the heat of wetting. [J per kg of oven-dry wood]</summary>
    /// <param name="moisture">Mean moisture content. [kg kg⁻¹]</param>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double Sensible(double moisture, double kelvins)
    {
        double bound = Math.Min(moisture, FiberSaturation.OfHandbook), free = moisture - bound, warm = kelvins - Zero;
        var dry = 103.1 * warm + 3.867 / 2 * (kelvins * kelvins - Zero * Zero);
        return dry + bound * WoodThermal.WaterHeatCapacity * warm + (1 + bound) * Bond(100 * bound, kelvins) + free * FreeWater(warm);
    }

    /// <summary>Its slope by temperature. [J K⁻¹ per kg of oven-dry wood]</summary>
    /// <param name="moisture">Mean moisture content. [kg kg⁻¹]</param>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double Capacity(double moisture, double kelvins)
    {
        var melting = kelvins < Zero && kelvins > Zero - FreezingSpan ? Math.Max(0, moisture - FiberSaturation.OfHandbook) * LatentHeat.OfFusion / FreezingSpan : 0;
        return WoodThermal.HeatCapacity(moisture, kelvins) + melting;
    }

    private static double FreeWater(double warm)
    {
        if (warm >= 0) return WoodThermal.WaterHeatCapacity * warm;
        return WoodThermal.IceHeatCapacity * warm - LatentHeat.OfFusion * Math.Min(1, -warm / FreezingSpan);
    }

    // Eq. 4-18 integrated from 0 °C; beyond 280 to 420 K its temperature term is held.
    private static double Bond(double percent, double kelvins) =>
        1000 * percent * ((-0.06191 - 1.33e-4 * percent) * (kelvins - Zero) + 2.36e-4 * (Held(kelvins) - Held(Zero)));

    private static double Held(double kelvins)
    {
        var inside = Math.Clamp(kelvins, ColdestBond, HottestBond);
        return inside * inside / 2 + inside * (kelvins - inside);
    }
}
