using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Rickyard.Core.Forecasting;

/// <summary>Columns of a Latin hypercube in standard normal numbers: each member gets another slice of the distribution, in shuffled order.</summary>
internal static class LatinHypercube
{
    /// <summary>One column.</summary>
    internal static double[] Column(int count, int seed, int column)
    {
        var random = new Xoshiro256StarStar(unchecked(seed * 7919 + column * 104729 + 17));
        var values = Enumerable.Range(0, count).Select(i => Normal.InvCDF(0, 1, (i + random.NextDouble()) / count)).ToArray();
        for (var i = count - 1; i > 0; i--)
        {
            var j = random.Next(i + 1);
            (values[i], values[j]) = (values[j], values[i]);
        }

        return values;
    }
}
