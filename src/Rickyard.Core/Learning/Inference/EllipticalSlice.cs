using MathNet.Numerics.Distributions;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// A step of elliptical slice sampling of standard normal numbers under any likelihood (Murray, Adams and MacKay 2010, Proceedings of Machine Learning Research 9: 541, from
/// memory): no tuning, never stands still.
/// </summary>
internal static class EllipticalSlice
{
    /// <summary>An end to shrinking, far beyond any need: the arc is then under a thousandth of a millionth of a turn.</summary>
    private const int MostSteps = 60;

    /// <summary>Step.</summary>
    /// <param name="numbers">Where the chain is; moved.</param>
    /// <param name="likelihood">Log likelihood there.</param>
    /// <param name="at">Log likelihood of the numbers as they stand when called.</param>
    /// <param name="random">Source of chance.</param>
    /// <returns>Log likelihood at the new place.</returns>
    internal static double Step(Span<double> numbers, double likelihood, Func<double> at, Random random)
    {
        Span<double> from = stackalloc double[numbers.Length], across = stackalloc double[numbers.Length];
        numbers.CopyTo(from);
        for (var k = 0; k < across.Length; k++) across[k] = Normal.Sample(random, 0, 1);
        var level = likelihood + Math.Log(1 - random.NextDouble());
        var angle = 2 * Math.PI * random.NextDouble();
        var (low, high) = (angle - 2 * Math.PI, angle);
        for (var step = 0; step < MostSteps; step++)
        {
            var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
            for (var k = 0; k < numbers.Length; k++) numbers[k] = from[k] * cosine + across[k] * sine;
            var there = at();
            if (there > level) return there;
            if (angle < 0) low = angle;
            else high = angle;
            angle = low + (high - low) * random.NextDouble();
        }

        from.CopyTo(numbers);
        return at();
    }
}
