namespace Rickyard.Core.Learning.Inference;

/// <summary>One draw of an observed piece.</summary>
/// <param name="Numbers">Standard normal numbers of its unknowns.</param>
/// <param name="Size">Of what its mass has of its own.</param>
/// <param name="Discrepancy">How far the engine is off for it, after its last observation.</param>
internal sealed record PieceDraw(double[] Numbers, double Size, Discrepancy Discrepancy);
