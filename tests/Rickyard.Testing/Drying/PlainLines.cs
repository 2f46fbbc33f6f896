namespace Rickyard.Testing.Drying;

/// <summary>The textbook elimination of one tridiagonal system (Thomas 1949), a row at a time.</summary>
public static class PlainLines
{
    /// <summary>Solve.</summary>
    /// <param name="below">Left of the diagonal; the first is not used.</param>
    /// <param name="diagonal">The diagonal.</param>
    /// <param name="above">Right of it; the last is not used.</param>
    /// <param name="right">Right-hand side.</param>
    public static double[] Solve(double[] below, double[] diagonal, double[] above, double[] right)
    {
        var n = right.Length;
        double[] upper = new double[n], x = new double[n];
        for (var i = 0; i < n; i++)
        {
            var pivot = diagonal[i] - (i > 0 ? below[i] * upper[i - 1] : 0);
            upper[i] = i < n - 1 ? above[i] / pivot : 0;
            x[i] = (right[i] - (i > 0 ? below[i] * x[i - 1] : 0)) / pivot;
        }

        for (var i = n - 2; i >= 0; i--) x[i] -= upper[i] * x[i + 1];
        return x;
    }
}
