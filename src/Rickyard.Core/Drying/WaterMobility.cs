using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// How easily water moves inside wood: the diffusivities on moisture content, as plain formulas (physics.md, D1 to D9). The kernels use
/// <see cref="MobilityTable"/>, which is made from these. Moisture is a fraction, diffusivities are in m² s⁻¹.
/// </summary>
/// <param name="BasicDensity">Oven-dry mass over green volume, 250 to 1000. [kg m⁻³]</param>
/// <param name="FreeWater">Diffusivity of free water across the grain in water-filled pores at 20 °C (D7). [m² s⁻¹]</param>
public sealed record WaterMobility(double BasicDensity, double FreeWater)
{
    /// <summary>Basic density at which the oak curve was measured. [kg m⁻³]</summary>
    public const double ReferenceDensity = 560;

    /// <summary>Exponent of basic density: fit of the cell-wall geometry between 350 and 800 kg m⁻³ (recommended set, step 4).</summary>
    public const double DensityExponent = -2.39;

    /// <summary>Free water along the grain over free water across it: 10, radiata pine at 30 °C (Cunningham, abstract).</summary>
    public const double FreeWaterAlongOverAcross = 10;

    /// <summary>Coldest temperature at which all free water is ice: sap freezes between 0 and about -2 °C. [°C]</summary>
    public const double AllFrozenCelsius = -2;

    /// <summary>
    /// Free water in pores of the kind (D7). No hardwood value is published. The range of radiata pine above saturation, 1.6e-10 to 1.2e-7 m² s⁻¹
    /// at 5 to 30 °C (Cunningham), sets the order of magnitude; the ranking by anatomy is that of uptake (Michalec and Niklasova 2006) and of
    /// tyloses. Judgement, with <see cref="FreeWaterSpreadLog"/>.
    /// </summary>
    public static double FreeWaterOf(Anatomy anatomy) => anatomy switch
    {
        Anatomy.Softwood => 3e-9,
        Anatomy.DiffusePorous => 3e-9,
        Anatomy.SemiRingPorous => 1.5e-9,
        Anatomy.RingPorousOpen => 1e-9,
        _ => 3e-10,
    };

    /// <summary>Standard deviation of the logarithm of <see cref="FreeWaterOf"/>: a factor 2.</summary>
    public const double FreeWaterSpreadLog = 0.7;

    /// <summary>All lumens full (Wood Handbook eq. 4-3). [kg kg⁻¹]</summary>
    public double MaximumMoisture => WoodDensity.MaximumMoisture(BasicDensity);

    /// <summary>Bound water and vapour across the grain, held at its value at fibre saturation above it. [m² s⁻¹]</summary>
    public double BoundAcross(double moisture, double celsius)
    {
        double kelvins = celsius + Temperature.IcePointKelvins, percent = 100 * Math.Clamp(moisture, 0.01, FiberSaturation.OfLinearRule(celsius));
        return Math.Min(OakCurve(percent, kelvins), CellWallLimit(percent, kelvins)) * Math.Pow(BasicDensity / ReferenceDensity, DensityExponent);
    }

    /// <summary>Bound water and vapour along the grain: 20 times the value across when dry, 3 times near fibre saturation (D5). [m² s⁻¹]</summary>
    public double BoundAlong(double moisture, double celsius) =>
        BoundAcross(moisture, celsius) * Math.Clamp(13 * Math.Exp(-0.0978 * (100 * Math.Min(moisture, 0.30) - 10)), 3, 20);

    /// <summary>Free water across the grain by capillary suction; none below fibre saturation, none in ice (D7, D8). [m² s⁻¹]</summary>
    public double FreeAcross(double moisture, double celsius)
    {
        var saturation = FiberSaturation.OfLinearRule(celsius);
        if (moisture <= saturation) return 0;
        var filling = Math.Min(1, (moisture - saturation) / Math.Max(0.05, MaximumMoisture - saturation));
        return FreeWater * filling * Math.Sqrt(filling) * Fluidity(celsius) * LiquidShare(celsius);
    }

    /// <summary>Oak curve of Simpson and Liu (1991), constants from a public script that cites no source (recommended set, step 1).</summary>
    private static double OakCurve(double percent, double kelvins) => 19.2e-4 * Math.Exp(-5280 / kelvins + 0.0115 * percent);

    /// <summary>Diffusion through cell walls and lumens in series and parallel (Siau 1984, eq. 6.22), as fitted at 560 kg m⁻³ (step 2).</summary>
    private static double CellWallLimit(double percent, double kelvins) =>
        Math.Exp(-9.7127 - 4614.1 / kelvins + (-0.01162 + 33.034 / kelvins) * percent);

    /// <summary>Surface tension over viscosity of water, relative to 20 °C: what drives capillary flow by temperature (D8).</summary>
    private static double Fluidity(double celsius)
    {
        static double Ratio(double kelvins) => (0.128 - 1.85e-4 * kelvins) / (2.414e-5 * Math.Pow(10, 247.8 / (kelvins - 140)));
        return Ratio(Math.Max(celsius, AllFrozenCelsius) + Temperature.IcePointKelvins) / Ratio(293.15);
    }

    private static double LiquidShare(double celsius) => Math.Clamp((celsius - AllFrozenCelsius) / -AllFrozenCelsius, 0, 1);
}
