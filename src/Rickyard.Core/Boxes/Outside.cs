namespace Rickyard.Core.Boxes;

/// <summary>The air outside a box over a step, and the sun on level ground.</summary>
/// <param name="Kelvins">[K]</param>
/// <param name="VaporPressure">[Pa]</param>
/// <param name="Sun">[W m⁻²]</param>
public readonly record struct Outside(double Kelvins, double VaporPressure, double Sun);
