namespace Rickyard.Core.Wood;

/// <summary>What is believed, before any reading, of how fast a wood dries beside what its density explains: a log-normal factor on diffusivity.</summary>
/// <param name="MeanLog">Mean of the natural logarithm; 0 is northern red oak's structure.</param>
/// <param name="SpreadLog">Standard deviation of the natural logarithm.</param>
/// <param name="Rule">How it came from the published values, in words.</param>
public sealed record RateFactorPrior(double MeanLog, double SpreadLog, string Rule)
{
    /// <summary>Median of the factor. [–]</summary>
    public double Median => Math.Exp(MeanLog);
}
