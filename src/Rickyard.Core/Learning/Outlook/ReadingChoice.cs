using Rickyard.Core.Measuring;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>A reading that could be taken today.</summary>
/// <param name="Words">What to do.</param>
/// <param name="Pins">Where the pins go, or null.</param>
/// <param name="Piece">The marked split it is about, or empty.</param>
/// <param name="GivesUpPiece">Whether the piece is lost for further weighings.</param>
/// <param name="Value">What it would show under each draw, its own error included. [kg kg⁻¹, or ln kg]</param>
internal sealed record ReadingChoice(string Words, Pins? Pins, string Piece, bool GivesUpPiece, double[] Value);
