namespace Rickyard.Core.Learning;

/// <summary>How many splits to probe so that their mean core is known to ±2 points at 90 % (Student's t).</summary>
/// <param name="SpreadBetweenPieces">Standard deviation of core readings between splits, the reading's own error included. [kg kg⁻¹]</param>
/// <param name="Pieces">Splits to probe.</param>
public sealed record ProbeCount(double SpreadBetweenPieces, int Pieces);
