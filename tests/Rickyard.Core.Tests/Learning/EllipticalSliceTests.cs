using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.Inference;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class EllipticalSliceTests
{
    [Fact]
    public void Normal_prior_and_normal_reading_give_the_conjugate_posterior()
    {
        // Prior N(0, 1), reading 1.5 with standard deviation 0.5: posterior mean 1.2, variance 0.2 (textbook result).
        var random = new Xoshiro256StarStar(5);
        double Chance(double x) => -0.5 * Math.Pow((x - 1.5) / 0.5, 2);
        var (at, draws) = (0.0, new double[20000]);
        for (var i = 0; i < draws.Length; i++)
        {
            var (from, across) = (at, Normal.Sample(random, 0, 1));
            EllipticalSlice.Walk(Chance(at), (cosine, sine) => Chance(at = from * cosine + across * sine), random);
            draws[i] = at;
        }

        // Four standard errors of some 5000 effective draws.
        Assert.InRange(draws.Average(), 1.2 - 0.025, 1.2 + 0.025);
        Assert.InRange(draws.Average(x => (x - 1.2) * (x - 1.2)), 0.2 - 0.016, 0.2 + 0.016);
    }
}
