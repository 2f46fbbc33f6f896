namespace Rickyard.Core.Learning.Inference;

/// <summary>What the stand-in says of one piece, for its terms.</summary>
/// <param name="logs">Natural logarithms of the piece's outputs, weather included, by the piece's own numbering.</param>
/// <param name="pieceSize">Standard normal number of what the piece's mass has of its own.</param>
/// <param name="meters">Standard normal numbers of the meters' own errors.</param>
internal readonly ref struct PiecePrediction(ReadOnlySpan<double> logs, double pieceSize, ReadOnlySpan<double> meters)
{
    private readonly ReadOnlySpan<double> _logs = logs;
    private readonly ReadOnlySpan<double> _meters = meters;

    internal double PieceSize { get; } = pieceSize;

    /// <summary>Logarithm of an output.</summary>
    internal double Log(int output) => _logs[output];

    /// <summary>An output.</summary>
    internal double Value(int output) => Math.Exp(_logs[output]);

    /// <summary>A meter's number.</summary>
    internal double Meter(int meter) => meter >= 0 ? _meters[meter] : 0;
}
