namespace Rickyard.Core.Learning.Inference;

/// <summary>All that was observed of a lot, as the inference sees it.</summary>
/// <param name="Pieces">Pieces with their terms.</param>
/// <param name="Promises">What the supplier promised.</param>
/// <param name="Meters">Meter scales used, each with an error of its own.</param>
/// <param name="PieceSpread">Standard deviation of what a piece's mass has of its own. [–]</param>
internal sealed record ObservedLot(IReadOnlyList<ObservedPiece> Pieces, IReadOnlyList<Promise> Promises, IReadOnlyList<string> Meters, double PieceSpread);
