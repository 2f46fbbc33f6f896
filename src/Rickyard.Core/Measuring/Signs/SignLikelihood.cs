namespace Rickyard.Core.Measuring.Signs;

/// <summary>What a sign without a number says of a piece: coarse, and bounded so that no sign can outweigh a reading (physics.md, V6; judgement, common practice, no source).</summary>
public static class SignLikelihood
{
    /// <summary>Curve of a sign: of the end grain for checks, of the whole piece for all others.</summary>
    public static SignCurve Of(WoodSign sign) => sign switch
    {
        WoodSign.Heavy => new(0.45, 0.07, 0.15, 0.85),
        WoodSign.Checks => new(0.22, -0.025, 0.10, 0.85),
        WoodSign.BarkLoose => new(0.30, -0.05, 0.15, 0.60),
        WoodSign.BubblingEnds => new(0.375, 0.03, 0.10, 0.90),
        WoodSign.Rings => new(0.25, -0.03, 0.15, 0.85),
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "No such sign."),
    };

    /// <summary>Logarithm of the chance that a piece of such moisture shows the sign, or does not.</summary>
    /// <param name="sign">Which.</param>
    /// <param name="seen">Whether it was there.</param>
    /// <param name="core">Inner tenth; none of the five goes by it. [kg kg⁻¹]</param>
    /// <param name="mean">Whole piece. [kg kg⁻¹]</param>
    /// <param name="shell">Outer 6 mm; none of the five goes by it. [kg kg⁻¹]</param>
    /// <param name="end">Outer 6 mm of end grain. [kg kg⁻¹]</param>
    public static double LogChance(WoodSign sign, bool seen, double core, double mean, double shell, double end)
    {
        var chance = Of(sign).Chance(sign == WoodSign.Checks ? end : mean);
        return Math.Log(seen ? chance : 1 - chance);
    }
}
