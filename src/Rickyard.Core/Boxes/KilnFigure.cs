namespace Rickyard.Core.Boxes;

/// <summary>A published figure of what drying wood takes.</summary>
/// <param name="Subject">Of what, as a sentence names it.</param>
/// <param name="Low">Lower end. [kWh per kg of water]</param>
/// <param name="High">Upper end; the same as <paramref name="Low"/> for a single figure. [kWh per kg of water]</param>
/// <param name="Source">Where it stands.</param>
public sealed record KilnFigure(string Subject, double Low, double High, string Source);
