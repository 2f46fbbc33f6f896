namespace Rickyard.Core.Learning.Inference;

/// <summary>A piece of which something was observed.</summary>
/// <param name="Name">Its number or name; empty for one that was not marked.</param>
/// <param name="Outputs">Outputs its terms need, as numbered in the table.</param>
/// <param name="Terms">What was observed of it, in order of time.</param>
/// <param name="IsFolded">
/// Whether what the piece has of its own is summed over in its likelihood rather than walked over: so for a single reading, which says little of its piece (physics.md, L8).
/// </param>
internal sealed record ObservedPiece(string Name, int[] Outputs, Term[] Terms, bool IsFolded);
