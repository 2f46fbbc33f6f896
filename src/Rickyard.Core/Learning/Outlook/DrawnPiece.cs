namespace Rickyard.Core.Learning.Outlook;

/// <summary>A piece whose future is to be drawn.</summary>
/// <param name="Numbers">Standard normal numbers of its unknowns.</param>
/// <param name="Weather">Modes of the weather.</param>
/// <param name="Factor">Factor on moisture by which the engine is off for it.</param>
/// <param name="MassFactor">Factor on its mass beside what its width says.</param>
internal readonly record struct DrawnPiece(double[] Numbers, double[] Weather, double Factor, double MassFactor);
