namespace Rickyard.Core.Verification;

/// <summary>What the engine says of a measured case, in the unit of the case; days that are never reached are infinite.</summary>
/// <param name="Typical">The typical piece in the usual weather.</param>
/// <param name="LowTenth">One in ten members is below this; null where no ensemble was run.</param>
/// <param name="Median">Half of them.</param>
/// <param name="HighTenth">Nine in ten.</param>
public sealed record Prediction(double Typical, double? LowTenth = null, double? Median = null, double? HighTenth = null)
{
    /// <summary>Mean over the pieces of a case, as though whatever is unknown were the same for all of them.</summary>
    internal static Prediction Mean(IReadOnlyCollection<Prediction> pieces) => new(
        pieces.Average(piece => piece.Typical), pieces.Average(piece => piece.LowTenth), pieces.Average(piece => piece.Median),
        pieces.Average(piece => piece.HighTenth));
}
