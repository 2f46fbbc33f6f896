using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.Inference;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class ChainHealthTests
{
    private const int Length = 4000;

    [Fact]
    public void Independent_draws_count_in_full_and_agree()
    {
        var chains = Chains(0, [0, 0, 0, 0]);
        Assert.InRange(ChainHealth.EffectiveDraws(chains), 0.85 * 4 * Length, 4 * Length);
        Assert.InRange(ChainHealth.SplitRHat(chains), 0.999, 1.003);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Draws_that_hang_together_count_for_less_as_theory_says(double correlation)
    {
        // An AR(1) chain of n draws is worth n (1 - ρ) / (1 + ρ) independent ones (textbook result).
        var expected = 4 * Length * (1 - correlation) / (1 + correlation);
        Assert.InRange(ChainHealth.EffectiveDraws(Chains(correlation, [0, 0, 0, 0])), 0.75 * expected, 1.3 * expected);
    }

    [Fact]
    public void Chains_about_different_places_are_told() => Assert.True(ChainHealth.SplitRHat(Chains(0, [0, 0, 1, 1])) > 1.1);

    private static double[][] Chains(double correlation, double[] places) => [.. places.Select((place, chain) => Chain(correlation, place, chain))];

    private static double[] Chain(double correlation, double place, int seed)
    {
        var random = new Xoshiro256StarStar(seed + 1);
        var (chain, now) = (new double[Length], Normal.Sample(random, 0, 1));
        for (var i = 0; i < Length; i++)
        {
            now = correlation * now + Math.Sqrt(1 - correlation * correlation) * Normal.Sample(random, 0, 1);
            chain[i] = place + now;
        }

        return chain;
    }
}
