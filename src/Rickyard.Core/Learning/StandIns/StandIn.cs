using System.Numerics.Tensors;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>
/// Stands in for the engine between the members it was run for: a linear trend and a Gaussian process over the unknowns (Sacks, Welch, Mitchell and Wynn 1989, Statistical
/// Science 4: 409, from memory; physics.md, L3 to L5). A microsecond instead of a tenth of a second, with its error known from members left out.
/// </summary>
internal sealed class StandIn
{
    private readonly double[][] _points;
    private readonly double[] _scale;
    private readonly double[][] _trend, _weights;

    /// <summary>From fitted parts.</summary>
    /// <param name="points">Members' numbers times <paramref name="scale"/>, by unknown and member.</param>
    /// <param name="scale">One over the length over which an answer changes, by unknown.</param>
    /// <param name="trend">By output: constant, then one for each unknown.</param>
    /// <param name="weights">By output and member.</param>
    /// <param name="weather">What weather does.</param>
    /// <param name="errors">By output.</param>
    internal StandIn(double[][] points, double[] scale, double[][] trend, double[][] weights, WeatherModes weather, double[] errors)
    {
        (_points, _scale, _trend, _weights, Weather) = (points, scale, trend, weights, weather);
        Errors = [.. errors.Select((error, output) => Math.Sqrt(error * error + weather.LeftOver[output] * weather.LeftOver[output]))];
    }

    /// <summary>Members it rests on: the length of a kernel.</summary>
    internal int Members => _points.Length > 0 ? _points[0].Length : 0;

    /// <summary>What weather does.</summary>
    internal WeatherModes Weather { get; }

    /// <summary>Standard deviation of what neither it nor the weather's modes say of an output's logarithm: its error at members left out, and what the modes leave.</summary>
    internal double[] Errors { get; }

    /// <summary>What weather adds to an output's logarithm.</summary>
    internal double OfWeather(int output, ReadOnlySpan<double> modes) => modes.Length == 0 ? 0 : TensorPrimitives.Dot(Weather.Weights[output], modes);

    /// <summary>How near a point is to every member, 0 to 1.</summary>
    /// <param name="numbers">One for each unknown.</param>
    /// <param name="kernel">Filled, by member.</param>
    internal void Feel(ReadOnlySpan<double> numbers, Span<double> kernel)
    {
        kernel.Clear();
        for (var k = 0; k < _points.Length; k++) AddSquares(_points[k], numbers[k] * _scale[k], kernel);
        TensorPrimitives.Multiply(kernel, -0.5, kernel);
        TensorPrimitives.Exp(kernel, kernel);
    }

    /// <summary>Natural logarithm of an output in middling weather.</summary>
    internal double Log(int output, ReadOnlySpan<double> numbers, ReadOnlySpan<double> kernel)
    {
        var trend = _trend[output];
        return trend[0] + TensorPrimitives.Dot<double>(trend.AsSpan(1), numbers) + TensorPrimitives.Dot(_weights[output], kernel);
    }

    private static void AddSquares(double[] points, double at, Span<double> sum)
    {
        var wide = System.Numerics.Vector<double>.Count;
        var (place, member) = (new System.Numerics.Vector<double>(at), 0);
        for (; member <= points.Length - wide; member += wide)
        {
            var apart = new System.Numerics.Vector<double>(points, member) - place;
            (new System.Numerics.Vector<double>(sum[member..]) + apart * apart).CopyTo(sum[member..]);
        }

        for (; member < points.Length; member++) sum[member] += (points[member] - at) * (points[member] - at);
    }
}
