namespace Rickyard.Core.Measuring.Sampling;

/// <summary>Placeholder until sampling is merged.</summary>
public static class PiecesNeeded
{
    /// <summary>Pieces.</summary>
    public static int For(double sd, double halfWidth, double confidence) => (int)Math.Ceiling(Math.Pow(1.645 * sd / halfWidth, 2)) + 2;
}
