using MathNet.Numerics.LinearAlgebra;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>
/// Covariance of the engine's answers between members: smooth over the unknowns, plus what members of one group share beyond them (their weather), plus what is
/// each one's own (steps of the solver). Factored once, used for many outputs.
/// </summary>
internal sealed class Covariance
{
    private readonly Matrix<double> _trend, _trendSolved;
    private readonly Matrix<double> _normal;

    private Covariance(Matrix<double> inverse, double logDeterminant, Matrix<double> trend, double shared)
    {
        (Inverse, LogDeterminant, Shared, _trend) = (inverse, logDeterminant, shared, trend);
        _trendSolved = inverse * trend;
        _normal = trend.TransposeThisAndMultiply(_trendSolved).Inverse();
    }

    /// <summary>Inverse, members × members.</summary>
    internal Matrix<double> Inverse { get; }

    /// <summary>Natural logarithm of the determinant.</summary>
    internal double LogDeterminant { get; }

    /// <summary>Variance that members of a group share, over that of the smooth part.</summary>
    internal double Shared { get; }

    /// <summary>Factor it.</summary>
    /// <param name="smooth">Smooth part, 1 on the diagonal.</param>
    /// <param name="trend">Trend functions at the members: 1 and the numbers themselves.</param>
    /// <param name="shared">Variance shared within a group.</param>
    /// <param name="own">Variance of each one's own.</param>
    /// <param name="groupSize">Members of a group, side by side.</param>
    internal static Covariance Of(Matrix<double> smooth, Matrix<double> trend, double shared, double own, int groupSize)
    {
        var whole = smooth.MapIndexed((i, j, value) => value + (i / groupSize == j / groupSize ? shared : 0) + (i == j ? own : 0));
        var factor = whole.Cholesky();
        return new(factor.Solve(Matrix<double>.Build.DenseIdentity(whole.RowCount)), factor.DeterminantLn, trend, shared);
    }

    /// <summary>Trend coefficients by generalized least squares.</summary>
    internal Vector<double> Trend(Vector<double> answers) => _normal * _trendSolved.TransposeThisAndMultiply(answers);

    /// <summary>Weights of the members in a prediction: inverse × what the trend leaves.</summary>
    internal Vector<double> Weights(Vector<double> answers, Vector<double> trend) => Inverse * (answers - _trend * trend);

    /// <summary>Sum of squares left, in units of the covariance.</summary>
    internal double LeftOver(Vector<double> answers)
    {
        var left = answers - _trend * Trend(answers);
        return left * (Inverse * left);
    }
}
