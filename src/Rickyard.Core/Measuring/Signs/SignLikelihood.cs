namespace Rickyard.Core.Measuring.Signs;

/// <summary>Placeholder until signs are merged.</summary>
public static class SignLikelihood
{
    /// <summary>Chance.</summary>
    public static double LogChance(WoodSign sign, bool seen, double core, double mean, double shell, double end) => Math.Log(0.5);
}
