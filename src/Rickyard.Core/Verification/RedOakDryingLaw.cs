using Rickyard.Core.Air;

namespace Rickyard.Core.Verification;

/// <summary>
/// Drying of red oak boards in a kiln (Tschernitz and Simpson 1979, restated): t = −τ ln((M − M_e)/(M₀ − M_e)), τ = Lⁿ/(a + b p_s), with L in inches,
/// p_s in mmHg and τ in days. Fitted for boards; the law of the source, not of this engine.
/// </summary>
public static class RedOakDryingLaw
{
    /// <summary>Exponent of thickness.</summary>
    public const double ThicknessExponent = 1.52;

    private const double A = 0.0575;
    private const double B = 0.00142;
    private const double PascalsPerMillimetreOfMercury = 133.322;

    /// <summary>Time constant. [d]</summary>
    /// <param name="inches">Thickness. [in]</param>
    /// <param name="celsius">Dry bulb. [°C]</param>
    public static double TimeConstant(double inches, double celsius) =>
        Math.Pow(inches, ThicknessExponent) / (A + B * SaturationPressure.OverWater(celsius + 273.15) / PascalsPerMillimetreOfMercury);

    /// <summary>Time from one moisture to another. [d]</summary>
    /// <param name="inches">Thickness. [in]</param>
    /// <param name="celsius">Dry bulb. [°C]</param>
    /// <param name="from">At the start, dry basis. [kg kg⁻¹]</param>
    /// <param name="to">At the end. [kg kg⁻¹]</param>
    /// <param name="equilibrium">Of the air. [kg kg⁻¹]</param>
    public static double Days(double inches, double celsius, double from, double to, double equilibrium) =>
        -TimeConstant(inches, celsius) * Math.Log((to - equilibrium) / (from - equilibrium));
}
