namespace Rickyard.Core.Learning.Inference;

/// <summary>Where one chain is with the lot: standard normal numbers of its unknowns, of how far its pieces differ, of its meters and of its weather.</summary>
internal sealed class LotState(int unknowns, int meters, int modes)
{
    /// <summary>How uncertain the spread between pieces is: standard deviation of its logarithm; judgement.</summary>
    internal const double PieceSpreadLog = 0.3;

    /// <summary>Unknowns, then the spread between pieces, then meters, then modes of the weather.</summary>
    internal double[] Numbers { get; } = new double[unknowns + 1 + meters + modes];

    /// <summary>The lot's unknowns.</summary>
    internal Span<double> Unknowns => Numbers.AsSpan(0, unknowns);

    /// <summary>Place in <see cref="Numbers"/> of the spread between pieces.</summary>
    internal int PieceSpreadPlace => unknowns;

    /// <summary>Factor on how far pieces differ.</summary>
    internal double PieceFactor => Math.Exp(PieceSpreadLog * Numbers[unknowns]);

    /// <summary>Meters' own errors.</summary>
    internal ReadOnlySpan<double> Meters => Numbers.AsSpan(unknowns + 1, meters);

    /// <summary>Modes of the weather.</summary>
    internal ReadOnlySpan<double> Weather => Numbers.AsSpan(unknowns + 1 + meters, modes);
}
