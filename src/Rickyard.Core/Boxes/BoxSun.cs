namespace Rickyard.Core.Boxes;

/// <summary>Glazing through which the sun heats a box.</summary>
/// <param name="Area">[m²]</param>
/// <param name="Gain">Part of the sun falling on it that becomes heat inside, 0 to 1.</param>
/// <param name="Conductance">Heat that passes it to the air outside. [W m⁻² K⁻¹]</param>
/// <param name="OverLevel">Sun on the glazing over sun on level ground: above 1 where it is tilted to the sun.</param>
public sealed record BoxSun(double Area, double Gain, double Conductance, double OverLevel);
