using MathNet.Numerics.LinearAlgebra;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>
/// Fits a <see cref="StandIn"/>. How far each unknown reaches comes from its share in a linear fit; one common length, and for each kind of sensor what is shared within a
/// group and what is each member's own, by the greatest likelihood over a small table (physics.md, L4).
/// </summary>
internal sealed class StandInFit
{
    private const double LeastReach = 0.05;
    private const double LeastVariance = 1e-12;
    private const int ChosenOn = 6;
    private static readonly double[] Lengths = [1.5, 2.2, 3.3, 5.0];
    private static readonly double[] Owns = [0.003, 0.03, 0.2];
    private static readonly double[] SharedWithWeather = [0, 0.1, 1, 10];

    private readonly EngineSample _sample;
    private readonly IReadOnlyList<EngineOutput> _outputs;
    private readonly Matrix<double> _trend;
    private readonly Vector<double>[] _answers;
    private readonly bool _hasWeather;
    private readonly IReadOnlyList<int> _leading;

    private StandInFit(EngineSample sample, IReadOnlyList<EngineOutput> outputs, IReadOnlyList<int> leading, bool hasWeather)
    {
        (_sample, _outputs, _leading, _hasWeather) = (sample, outputs, leading, hasWeather);
        _trend = Matrix<double>.Build.DenseOfRowArrays(sample.Numbers.Select(numbers => (double[])[1, .. numbers]));
        _answers = [.. sample.Answers.Select(answers => Vector<double>.Build.Dense(answers))];
    }

    /// <summary>Fit.</summary>
    /// <param name="sample">The engine's answers.</param>
    /// <param name="outputs">What they are answers to.</param>
    /// <param name="hasWeather">Whether groups differ in their weather.</param>
    /// <param name="leading">Outputs that the weather's modes are to carry best.</param>
    internal static StandIn Of(EngineSample sample, IReadOnlyList<EngineOutput> outputs, IReadOnlyList<int> leading, bool hasWeather) =>
        new StandInFit(sample, outputs, leading, hasWeather).Fit();

    private StandIn Fit()
    {
        var reach = Reach();
        var kinds = _outputs.Select((output, number) => (output.Sensor.Kind, number)).GroupBy(pair => pair.Kind, pair => pair.number).ToArray();
        var tried = new (double Score, double[] Scale, Dictionary<SensorKind, Covariance> Chosen)[Lengths.Length];
        Parallel.For(0, Lengths.Length, i => tried[i] = TryLength(reach, Lengths[i], kinds));
        var best = tried.MinBy(one => one.Score);
        return Assemble(best.Scale, best.Chosen);
    }

    private (double Score, double[] Scale, Dictionary<SensorKind, Covariance> Chosen) TryLength(double[] reach, double length, IGrouping<SensorKind, int>[] kinds)
    {
        double[] scale = [.. reach.Select(one => one / length)];
        var smooth = Smooth(scale);
        var best = kinds.ToDictionary(kind => kind.Key, _ => (Score: double.PositiveInfinity, Covariance: (Covariance?)null));
        foreach (var own in Owns)
        foreach (var shared in _hasWeather ? SharedWithWeather : [0])
        {
            var covariance = Covariance.Of(smooth, _trend, shared, own, _sample.GroupSize);
            foreach (var kind in kinds)
                if (Score(covariance, Some([.. kind])) is var score && score < best[kind.Key].Score) best[kind.Key] = (score, covariance);
        }

        return (best.Values.Sum(one => one.Score), scale, best.ToDictionary(pair => pair.Key, pair => pair.Value.Covariance!));
    }

    /// <summary>A few outputs of a kind, evenly through time.</summary>
    private static IEnumerable<int> Some(int[] outputs) => outputs.Length <= ChosenOn
        ? outputs
        : Enumerable.Range(0, ChosenOn).Select(i => outputs[(i + 1) * (outputs.Length - 1) / ChosenOn]);

    /// <summary>Minus twice the logarithm of the likelihood, trend and variance at their best, a mean over outputs.</summary>
    private double Score(Covariance covariance, IEnumerable<int> outputs) => outputs.Average(output =>
        _sample.Members * Math.Log(covariance.LeftOver(_answers[output]) / _sample.Members + LeastVariance)) + covariance.LogDeterminant;

    /// <summary>How strongly the answers follow each unknown, over the strongest.</summary>
    private double[] Reach()
    {
        var normal = _trend.TransposeThisAndMultiply(_trend).Inverse();
        var reach = new double[_trend.ColumnCount - 1];
        foreach (var answers in _answers)
        {
            var centred = answers - answers.Average();
            var variance = centred * centred / _sample.Members;
            if (variance < LeastVariance) continue;
            var slopes = normal * _trend.TransposeThisAndMultiply(answers);
            for (var k = 0; k < reach.Length; k++) reach[k] += slopes[k + 1] * slopes[k + 1] / variance;
        }

        var most = reach.Length > 0 ? Math.Sqrt(reach.Max()) : 0;
        return [.. reach.Select(one => Math.Max(LeastReach, most > 0 ? Math.Sqrt(one) / most : 1))];
    }

    private Matrix<double> Smooth(double[] scale) => Matrix<double>.Build.Dense(_sample.Members, _sample.Members, (i, j) =>
    {
        double sum = 0;
        for (var k = 0; k < scale.Length; k++)
        {
            var apart = (_sample.Numbers[i][k] - _sample.Numbers[j][k]) * scale[k];
            sum += apart * apart;
        }

        return Math.Exp(-0.5 * sum);
    });

    private StandIn Assemble(double[] scale, Dictionary<SensorKind, Covariance> chosen)
    {
        var count = _outputs.Count;
        var (trend, weights, weather, errors) = (new double[count][], new double[count][], new double[count][], new double[count]);
        for (var output = 0; output < count; output++)
        {
            var covariance = chosen[_outputs[output].Sensor.Kind];
            var line = covariance.Trend(_answers[output]);
            var weight = covariance.Weights(_answers[output], line);
            (trend[output], weights[output]) = (line.ToArray(), weight.ToArray());
            weather[output] = Weather(covariance, weight, covariance.LeftOver(_answers[output]));
            errors[output] = LeftOut(covariance, weight);
        }

        double[][] points = [.. scale.Select((one, k) => _sample.Numbers.Select(numbers => numbers[k] * one).ToArray())];
        return new(points, scale, trend, weights, WeatherModes.Of(weather, _leading), errors);
    }

    /// <summary>
    /// Best prediction of what each group's weather did, brought back to the variance it was drawn from, since best predictions are drawn in towards zero (Carpenter, Goldstein
    /// and Rasbash 2003, Applied Statistics 52: 431, from memory). That variance is what was found and what the prediction leaves open (a step of expectation-maximization).
    /// </summary>
    private double[] Weather(Covariance covariance, Vector<double> weight, double leftOver)
    {
        double[] effects = [.. Enumerable.Range(0, _sample.Groups).Select(group => covariance.Shared * Members(group).Sum(member => weight[member]))];
        var found = effects.Sum(effect => effect * effect) / effects.Length;
        var known = Enumerable.Range(0, _sample.Groups).Average(group => Members(group).Sum(i => Members(group).Sum(j => covariance.Inverse[i, j])));
        var open = leftOver / _sample.Members * covariance.Shared * (1 - covariance.Shared * known);
        var gain = found > LeastVariance ? Math.Min(3, Math.Sqrt(1 + Math.Max(0, open) / found)) : 0;
        return [.. effects.Select(effect => gain * effect)];
    }

    private IEnumerable<int> Members(int group) => Enumerable.Range(group * _sample.GroupSize, _sample.GroupSize);

    /// <summary>Error at members left out one by one.</summary>
    private static double LeftOut(Covariance covariance, Vector<double> weight) =>
        Math.Sqrt(Enumerable.Range(0, weight.Count).Average(member => Math.Pow(weight[member] / covariance.Inverse[member, member], 2)));
}
