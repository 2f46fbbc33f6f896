using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Rickyard.Core.Racks;

/// <summary>How little the description of a rack pins down: standard deviations of the logarithms of <see cref="RackFactors"/>. All judgement.</summary>
/// <param name="Wind">Of the air speed between the splits: 0.5, so two in three racks lie within a factor 1.65.</param>
/// <param name="Rain">Of rain on the faces: 0.7, within a factor 2.</param>
/// <param name="Sun">Of sun absorbed: 0.4, within a factor 1.5.</param>
public sealed record RackUncertainty(double Wind = 0.5, double Rain = 0.7, double Sun = 0.4)
{
    /// <summary>One rack that fits the description; lognormal with median 1, the same for the same seed.</summary>
    /// <param name="seed">Number of the member.</param>
    public RackFactors Draw(int seed)
    {
        var random = new Xoshiro256StarStar(seed);
        double Factor(double deviation) => Math.Exp(deviation * Normal.Sample(random, 0, 1));
        return new(Factor(Wind), Factor(Rain), Factor(Sun));
    }
}
