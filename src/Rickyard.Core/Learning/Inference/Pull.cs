using MathNet.Numerics.Distributions;

namespace Rickyard.Core.Learning.Inference;

/// <summary>How an observation pulls at what was expected: as a reading off by so much with such a variance.</summary>
/// <param name="Expected">What is expected of it.</param>
/// <param name="Miss">Reading less expected.</param>
/// <param name="Variance">Variance of the reading about the expected, the discrepancy left out; infinite where it does not pull.</param>
/// <param name="Slope">Change of the expected with the discrepancy.</param>
internal readonly record struct Pull(double Expected, double Miss, double Variance, double Slope)
{
    /// <summary>No pull.</summary>
    internal static Pull None { get; } = new(0, 0, double.PositiveInfinity, 0);

    /// <summary>Of a bound: the reading that has the same slope and curvature of the log likelihood here (Newton's step).</summary>
    /// <param name="expected">What is expected.</param>
    /// <param name="bound">The bound.</param>
    /// <param name="spread">Standard deviation.</param>
    /// <param name="side">1 where it is at least that, -1 where at most.</param>
    internal static Pull OfBound(double expected, double bound, double spread, int side)
    {
        var apart = Math.Max(-6, side * (expected - bound) / spread);
        var slope = Normal.PDF(0, 1, apart) / Normal.CDF(0, 1, apart);
        var curvature = slope * (slope + apart);
        return curvature < 1e-6 ? None : new(expected, side * spread * slope / curvature, spread * spread / curvature, 0);
    }
}
