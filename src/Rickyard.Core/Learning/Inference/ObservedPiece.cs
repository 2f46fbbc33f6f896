namespace Rickyard.Core.Learning.Inference;

/// <summary>A piece of which something was observed.</summary>
/// <param name="Name">Its number or name; empty for one that was not marked.</param>
/// <param name="Outputs">Outputs its terms need, as numbered in the table.</param>
/// <param name="Terms">What was observed of it, in order of time.</param>
internal sealed record ObservedPiece(string Name, int[] Outputs, Term[] Terms);
