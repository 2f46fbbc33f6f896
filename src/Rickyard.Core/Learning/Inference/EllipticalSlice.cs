namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// A step of elliptical slice sampling (Murray, Adams and MacKay 2010, Proceedings of Machine Learning Research 9: 541, from memory): no tuning, never stands still.
/// </summary>
internal static class EllipticalSlice
{
    /// <summary>An end to shrinking, far beyond any need.</summary>
    private const int MostSteps = 60;

    /// <summary>Walk along an ellipse from where the chain is (angle 0) until a place on it is likely enough.</summary>
    /// <param name="likelihood">Log likelihood where the chain is.</param>
    /// <param name="at">Moves the chain to a place given by cosine and sine of its angle and tells the log likelihood there.</param>
    /// <param name="random">Source of chance.</param>
    internal static void Walk(double likelihood, Func<double, double, double> at, Random random)
    {
        var level = likelihood + Math.Log(1 - random.NextDouble());
        var angle = 2 * Math.PI * random.NextDouble();
        var (low, high) = (angle - 2 * Math.PI, angle);
        for (var step = 0; step < MostSteps; step++)
        {
            if (at(Math.Cos(angle), Math.Sin(angle)) > level) return;
            if (angle < 0) low = angle;
            else high = angle;
            angle = low + (high - low) * random.NextDouble();
        }

        at(1, 0);
    }
}
