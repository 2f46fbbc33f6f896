namespace Rickyard.Core.Measuring.Signs;

/// <summary>
/// Chance of a sign by moisture: a logistic curve between a least and a most that leave room for signs that mislead (physics.md, V6). Every number is judgement
/// on common practice; there is no source.
/// </summary>
/// <param name="Middle">Moisture where the chance is half way. [kg kg⁻¹]</param>
/// <param name="Width">Moisture over which the odds of the bare logistic change by a factor e; below zero for signs of dry wood. [kg kg⁻¹]</param>
/// <param name="Least">Chance where the wood should not show it, 0 to 1.</param>
/// <param name="Most">Chance where it should, 0 to 1.</param>
public sealed record SignCurve(double Middle, double Width, double Least, double Most)
{
    /// <summary>Chance of seeing it.</summary>
    /// <param name="moisture">Of the part it tells of. [kg kg⁻¹]</param>
    public double Chance(double moisture) => Least + (Most - Least) / (1 + Math.Exp((Middle - moisture) / Width));
}
