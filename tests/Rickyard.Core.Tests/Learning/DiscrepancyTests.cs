using MathNet.Numerics.LinearAlgebra;
using Rickyard.Core.Learning.Inference;
using Xunit;

namespace Rickyard.Core.Tests.Learning;

public sealed class DiscrepancyTests
{
    private static readonly double[] Days = [0, 20, 95];
    private static readonly double[] Misses = [0.012, -0.004, 0.02];
    private static readonly double[] Slopes = [0.4, 0.3, 0.2];
    private const double Own = 0.01;

    [Fact]
    public void Filter_gives_the_density_of_the_whole_normal_distribution()
    {
        var covariance = Matrix<double>.Build.Dense(3, 3, (i, j) =>
            Slopes[i] * Slopes[j] * Discrepancy.Covariance(Days[i] - Days[j]) + (i == j ? Own * Own : 0));
        var misses = Vector<double>.Build.Dense(Misses);
        var whole = -0.5 * (misses * covariance.Inverse() * misses + Math.Log(covariance.Determinant()));
        Assert.Equal(whole, StepByStep(), 1e-10);
    }

    [Fact]
    public void Long_after_a_reading_all_is_forgotten()
    {
        var discrepancy = Discrepancy.Unknown;
        discrepancy.To(0);
        discrepancy.Learn(1, 0.05, 0.003, 1);
        Assert.True(discrepancy.Mean > 0.01);
        discrepancy.To(50 * Discrepancy.Memory);
        Assert.Equal(0, discrepancy.Mean, 1e-12);
        Assert.Equal(Discrepancy.Spread * Discrepancy.Spread, discrepancy.Variance, 1e-12);
    }

    [Fact]
    public void Reading_that_is_not_believed_teaches_nothing()
    {
        var discrepancy = Discrepancy.Unknown;
        discrepancy.To(0);
        discrepancy.Learn(1, 0.5, 0.003, 0);
        Assert.Equal(0, discrepancy.Mean);
    }

    private static double StepByStep()
    {
        var discrepancy = Discrepancy.Unknown;
        double sum = 0;
        for (var i = 0; i < Days.Length; i++)
        {
            discrepancy.To(Days[i]);
            var miss = Misses[i] - Slopes[i] * discrepancy.Mean;
            var variance = Slopes[i] * Slopes[i] * discrepancy.Variance + Own * Own;
            sum -= 0.5 * (miss * miss / variance + Math.Log(variance));
            discrepancy.Learn(Slopes[i], miss, variance, 1);
        }

        return sum;
    }
}
