using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Rickyard.Core.Weather;

/// <summary>A standard normal series with memory from day to day: z = φ·z + √(1 − φ²)·ε (physics.md, eq. M7).</summary>
/// <param name="memory">φ, 0 to below 1.</param>
/// <param name="seed">Decides the whole series.</param>
internal sealed class DailyAnomaly(double memory, int seed)
{
    private readonly Xoshiro256StarStar _random = new(seed);
    private double? _value;

    /// <summary>The next day's value; mean 0, standard deviation 1.</summary>
    public double Next()
    {
        var fresh = Normal.Sample(_random, 0, 1);
        _value = _value is { } yesterday ? memory * yesterday + Math.Sqrt(1 - memory * memory) * fresh : fresh;
        return _value.Value;
    }
}
