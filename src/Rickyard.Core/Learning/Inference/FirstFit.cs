using MathNet.Numerics.LinearAlgebra;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// A normal distribution near the posterior of lot and pieces together, by Gauss-Newton steps from the prior's middle. The chains move along it, so that they walk far in each
/// step; it need not be exact, since they correct it (generalized elliptical slice sampling: Nishihara, Murray and Adams 2014, J. Mach. Learn. Res. 15: 2087, from memory).
/// </summary>
internal sealed class FirstFit
{
    private const int Steps = 10;
    private const int BelievedSteps = 7;
    private const double Nudge = 1e-3;

    /// <summary>Longest step of any number. [standard deviations of the prior]</summary>
    private const double LongestStep = 1;

    /// <summary>A variance that stands for no pull at all.</summary>
    private const double Nothing = 1e12;

    private readonly double[][] _upper;

    private FirstFit(double[] middle, Matrix<double> precision, IReadOnlyList<double[]> directions)
    {
        (Middle, Directions) = (middle, directions);
        _upper = precision.Cholesky().Factor.Transpose().ToRowArrays();
    }

    /// <summary>Its middle: the lot's numbers, then each walked piece's own.</summary>
    internal double[] Middle { get; }

    /// <summary>Directions in which folded pieces' own numbers move their readings.</summary>
    internal IReadOnlyList<double[]> Directions { get; }

    /// <summary>Fit.</summary>
    internal static FirstFit Of(JointState state)
    {
        var numbers = new double[state.Count];
        var precision = Matrix<double>.Build.DenseIdentity(state.Count);
        for (var step = 0; step < Steps; step++)
        {
            precision = Matrix<double>.Build.DenseIdentity(state.Count);
            var pull = Vector<double>.Build.Dense(state.Count, i => -numbers[i]);
            for (var piece = 0; piece < state.States.Length; piece++) Add(state, numbers, piece, step < BelievedSteps, precision, pull);
            var move = precision.Cholesky().Solve(pull);
            var shorter = Math.Min(1, LongestStep / Math.Max(move.AbsoluteMaximum(), 1e-12));
            for (var i = 0; i < numbers.Length; i++) numbers[i] += shorter * move[i];
        }

        return new(numbers, precision, [.. state.Likelihood.Folded.Pieces.Select(piece => Direction(state.OwnSlopes(numbers, piece, Nudge)))]);
    }

    /// <summary>From standard normal numbers to numbers less the middle.</summary>
    internal double[] Spread(double[] standard)
    {
        var x = new double[standard.Length];
        for (var i = x.Length - 1; i >= 0; i--)
        {
            var (row, sum) = (_upper[i], standard[i]);
            for (var j = i + 1; j < x.Length; j++) sum -= row[j] * x[j];
            x[i] = sum / row[i];
        }

        return x;
    }

    /// <summary>Twice the logarithm of its density, less a constant, at numbers less the middle.</summary>
    internal double MinusSquares(ReadOnlySpan<double> apart)
    {
        double sum = 0;
        for (var i = 0; i < apart.Length; i++)
        {
            var row = System.Numerics.Tensors.TensorPrimitives.Dot(_upper[i].AsSpan(i), apart[i..]);
            sum += row * row;
        }

        return -sum;
    }

    private static void Add(JointState state, double[] numbers, int piece, bool believed, Matrix<double> precision, Vector<double> pull)
    {
        var pulls = state.Pulls(numbers, piece, believed);
        int[] moving = [.. state.Moving(piece)];
        var slopes = Matrix<double>.Build.DenseOfColumns(moving.Select(i => Slopes(state, numbers, piece, pulls, i, believed)));
        var weighed = slopes.TransposeThisAndMultiply(Weights(state, numbers, piece, pulls));
        var (more, by) = (weighed * slopes, weighed * Vector<double>.Build.Dense([.. pulls.Select(one => one.Miss)]));
        for (var a = 0; a < moving.Length; a++)
        {
            pull[moving[a]] += by[a];
            for (var b = 0; b < moving.Length; b++) precision[moving[a], moving[b]] += more[a, b];
        }
    }

    /// <summary>Inverse of the covariance of a piece's observations: each one's own error, the discrepancy they share, and what a folded piece has of its own.</summary>
    private static Matrix<double> Weights(JointState state, double[] numbers, int piece, Pull[] pulls)
    {
        var days = state.Days(piece);
        var own = state.Likelihood.Observed.Pieces[piece].IsFolded ? state.OwnSlopes(numbers, piece, Nudge).Sum(slope => slope * slope) : 0;
        return Matrix<double>.Build.Dense(pulls.Length, pulls.Length, (i, j) =>
            Discrepancy.Covariance(days[i] - days[j]) * pulls[i].Slope * pulls[j].Slope + (i == j ? Math.Min(Nothing, pulls[i].Variance) + own : 0)).Inverse();
    }

    private static double[] Slopes(JointState state, double[] numbers, int piece, Pull[] pulls, int i, bool believed)
    {
        var kept = numbers[i];
        numbers[i] = kept + Nudge;
        var there = state.Pulls(numbers, piece, believed);
        numbers[i] = kept;
        return [.. there.Zip(pulls, (a, b) => (a.Expected - b.Expected) / Nudge)];
    }

    private static double[] Direction(double[] slopes)
    {
        var length = Math.Sqrt(slopes.Sum(slope => slope * slope));
        return length > 0 ? [.. slopes.Select(slope => slope / length)] : slopes;
    }
}
