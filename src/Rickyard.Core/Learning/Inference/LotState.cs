namespace Rickyard.Core.Learning.Inference;

/// <summary>Where one chain is with the lot: standard normal numbers of its unknowns, of how far its pieces differ, and of its meters.</summary>
internal sealed class LotState(int unknowns, int meters)
{
    /// <summary>How uncertain the spread between pieces is: standard deviation of its logarithm; judgement.</summary>
    internal const double PieceSpreadLog = 0.3;

    /// <summary>Unknowns, then the spread between pieces, then meters.</summary>
    internal double[] Numbers { get; } = new double[unknowns + 1 + meters];

    /// <summary>Number of the weather.</summary>
    internal int Weather { get; set; }

    /// <summary>The lot's unknowns.</summary>
    internal Span<double> Unknowns => Numbers.AsSpan(0, unknowns);

    /// <summary>Factor on how far pieces differ.</summary>
    internal double PieceFactor => Math.Exp(PieceSpreadLog * Numbers[unknowns]);

    /// <summary>Meters' own errors.</summary>
    internal ReadOnlySpan<double> Meters => Numbers.AsSpan(unknowns + 1);
}
