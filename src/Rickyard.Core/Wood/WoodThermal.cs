using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>
/// Conductivity and heat capacity of moist wood (Wood Handbook FPL-GTR-190, ch. 4, eq. 4-15 to 4-18; physics.md, eq. W5 to W7).
/// Published conductivities scatter by 20 %. Raw doubles: these sit inside kernels.
/// </summary>
public static class WoodThermal
{
    /// <summary>Conductivity along the grain over that across: 1.5 to 2.8, mean 1.8 (Wood Handbook ch. 4, text). [–]</summary>
    public const double LongitudinalRatio = 1.8;

    /// <summary>Heat capacity of liquid water in the formulas. [J kg⁻¹ K⁻¹]</summary>
    public const double WaterHeatCapacity = 4180;

    /// <summary>Heat capacity of ice near 0 °C (from memory). [J kg⁻¹ K⁻¹]</summary>
    public const double IceHeatCapacity = 2100;

    /// <summary>Ends of the range in which the bond-energy term is published, 7 to 147 °C; the term is held outside. [K]</summary>
    private const double ColdestBond = 280, HottestBond = 420;

    /// <summary>
    /// Conductivity across the grain, radial and tangential alike: eq. 4-15 up to 30 %, from 40 % up the line for wet wood,
    /// k = G (0.200 + 0.52 M) + 0.024 (MacLean 1941, from memory), straight between; +2.5 % per 10 K from 24 °C (text: 2 to 3 %). Ice is
    /// not counted, so frozen green wood conducts better than this. [W m⁻¹ K⁻¹]
    /// </summary>
    /// <param name="basicDensity">Oven-dry mass over green volume, above 300. [kg m⁻³]</param>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double TransverseConductivity(double basicDensity, double moisture, double kelvins)
    {
        var gravity = WoodDensity.DryMassPerVolume(basicDensity, moisture, WoodDensity.UsualVolumetricShrinkage(basicDensity)) / 1000;
        return ConductivityFromGravity(gravity, moisture) * (1 + 0.0025 * (kelvins - (24 + Temperature.IcePointKelvins)));
    }

    /// <summary>The same at 24 °C from specific gravity at volume at this moisture, for wood whose shrinkage is known. [W m⁻¹ K⁻¹]</summary>
    /// <param name="gravity">Oven-dry mass over volume at this moisture, over that of water. [–]</param>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    public static double ConductivityFromGravity(double gravity, double moisture)
    {
        const double dryEnd = 0.30, wetEnd = 0.40;
        if (moisture <= dryEnd) return BoundWater(gravity, moisture);
        if (moisture >= wetEnd) return WetWood(gravity, moisture);
        var share = (moisture - dryEnd) / (wetEnd - dryEnd);
        return (1 - share) * BoundWater(gravity, dryEnd) + share * WetWood(gravity, wetEnd);
    }

    /// <summary>
    /// Heat capacity of moist wood per mass of dry wood (eq. 4-16 to 4-18 times 1 + M). Water above fibre saturation adds as water, below
    /// 0 °C as ice (its melting is not in here: <see cref="Air.LatentHeat.OfFusion"/>). [J K⁻¹ per kg of oven-dry wood]
    /// </summary>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    /// <param name="kelvins">Temperature; the source covers 280 to 420, the dry part is extrapolated below. [K]</param>
    public static double HeatCapacity(double moisture, double kelvins)
    {
        double bound = Math.Min(moisture, FiberSaturation.OfHandbook), free = moisture - bound;
        var freeCapacity = kelvins < Temperature.IcePointKelvins ? IceHeatCapacity : WaterHeatCapacity;
        return OvenDryHeatCapacity(kelvins) + bound * WaterHeatCapacity + (1 + bound) * BondEnergy(100 * bound, kelvins) + free * freeCapacity;
    }

    /// <summary>Heat capacity of oven-dry wood (eq. 4-16a), nearly the same for all species. [J kg⁻¹ K⁻¹]</summary>
    /// <param name="kelvins">Temperature, 280 to 420. [K]</param>
    public static double OvenDryHeatCapacity(double kelvins) => 103.1 + 3.867 * kelvins;

    private static double BoundWater(double gravity, double moisture) => gravity * (0.1941 + 0.4064 * moisture) + 0.01864;

    private static double WetWood(double gravity, double moisture) => gravity * (0.200 + 0.52 * moisture) + 0.024;

    // Eq. 4-18, percent in, per kg of moist wood.
    private static double BondEnergy(double percent, double kelvins) =>
        1000 * percent * (-0.06191 + 2.36e-4 * Math.Clamp(kelvins, ColdestBond, HottestBond) - 1.33e-4 * percent);
}
