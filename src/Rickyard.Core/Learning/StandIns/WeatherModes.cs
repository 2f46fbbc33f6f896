using MathNet.Numerics.LinearAlgebra;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>
/// What weather does to the answers, boiled down from the weathers that were run to a few standard normal numbers: principal components over core, mean and whatever was observed;
/// what they leave of an output counts as noise (physics.md, L5).
/// </summary>
/// <param name="Weights">What one standard deviation of each mode adds to the logarithm of an output, by output and mode.</param>
/// <param name="LeftOver">Standard deviation of what the modes leave, by output.</param>
internal sealed record WeatherModes(double[][] Weights, double[] LeftOver)
{
    private const int Most = 6;

    /// <summary>Components that together carry this much of the variance are enough.</summary>
    private const double Enough = 0.95;

    private const double Nothing = 1e-8;

    /// <summary>Number of modes.</summary>
    internal int Count => Weights[0].Length;

    /// <summary>Find them.</summary>
    /// <param name="effects">What each weather that was run adds to the logarithm of an output, by output and weather.</param>
    /// <param name="leading">Outputs the modes are to carry best.</param>
    internal static WeatherModes Of(double[][] effects, IReadOnlyList<int> leading)
    {
        var weathers = effects[0].Length;
        var led = leading.Where(output => Deviation(effects[output]) > Nothing).ToArray();
        var scores = led.Length == 0 ? [] : Scores(Matrix<double>.Build.Dense(weathers, led.Length, (weather, i) => effects[led[i]][weather]));
        double[][] weights = [.. effects.Select(effect => scores.Select(score => Dot(score, effect) / weathers).ToArray())];
        return new(weights, [.. effects.Select((effect, output) => Math.Sqrt(Math.Max(0, Dot(effect, effect) / weathers - Dot(weights[output], weights[output]))))]);
    }

    /// <summary>Scores of the weathers on the leading components, each of variance 1.</summary>
    private static double[][] Scores(Matrix<double> effects)
    {
        var parts = effects.Svd();
        var total = parts.S.Sum(value => value * value);
        List<double[]> scores = [];
        double carried = 0;
        for (var mode = 0; mode < Math.Min(Most, parts.S.Count) && carried < Enough * total; mode++)
        {
            carried += parts.S[mode] * parts.S[mode];
            scores.Add((parts.U.Column(mode) * Math.Sqrt(effects.RowCount)).ToArray());
        }

        return [.. scores];
    }

    private static double Deviation(double[] values) => Math.Sqrt(Dot(values, values) / values.Length);

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
