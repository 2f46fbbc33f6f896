namespace Rickyard.Core.Wood;

/// <summary>
/// Fibre saturation point: the moisture at which the cell walls are full and free water begins (physics.md, eq. S3). Species differ from 25
/// to 32 %; beech and sugar maple begin to shrink somewhat above it.
/// </summary>
public static class FiberSaturation
{
    /// <summary>The one value that the Wood Handbook's formulas for shrinkage and density take (FPL-GTR-282, eq. 4-12). [kg kg⁻¹]</summary>
    public const double OfHandbook = 0.30;

    /// <summary>Where the isotherm ends, at activity 1: 28.8 % at 20 °C, 21.2 % at 100 °C. [kg kg⁻¹]</summary>
    /// <param name="celsius">Temperature. [°C]</param>
    public static double OfIsotherm(double celsius) => SorptionIsotherm.At(celsius).Saturation;

    /// <summary>The rule 30 % less 0.1 % per kelvin above 20 °C (Stamm 1964; Siau 1984, from memory), held outside 0 to 110 °C. [kg kg⁻¹]</summary>
    /// <param name="celsius">Temperature. [°C]</param>
    public static double OfLinearRule(double celsius) => 0.30 - 0.001 * (Math.Clamp(celsius, 0, 110) - 20);
}
