namespace Rickyard.Core.Measuring.Observed;

/// <summary>When, on what and where an observation was noted.</summary>
/// <param name="Day">Days from the start of the case. [d]</param>
/// <param name="Piece">Number or name of the marked split, or empty for one of the lot that was not marked (each a new one).</param>
/// <param name="Class">Class of the charge the piece belongs to; empty where the case has no classes.</param>
/// <param name="Row">Row of the table or place in the list it came from, counted from 1 as a person counts lines; for messages.</param>
/// <param name="Words">What it was, in words: "12 % on the end grain, 3 May 2026".</param>
public sealed record Origin(double Day, string Piece, string Class, int Row, string Words);
