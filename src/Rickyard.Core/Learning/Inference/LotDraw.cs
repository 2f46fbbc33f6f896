namespace Rickyard.Core.Learning.Inference;

/// <summary>One draw of what the lot may be, given what was observed.</summary>
/// <param name="Unknowns">Standard normal numbers of the lot's unknowns.</param>
/// <param name="PieceFactor">Factor on how far pieces differ.</param>
/// <param name="Meters">Standard normal numbers of the meters' own errors.</param>
/// <param name="Weather">Modes of the weather.</param>
/// <param name="Pieces">Observed pieces.</param>
/// <param name="Chances">How each observation is explained, by its place in the list.</param>
internal sealed record LotDraw(double[] Unknowns, double PieceFactor, double[] Meters, double[] Weather, PieceDraw[] Pieces, TermChance[] Chances);
