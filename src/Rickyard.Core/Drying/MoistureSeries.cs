namespace Rickyard.Core.Drying;

/// <summary>What a person would follow of one split through time; all arrays run along the report times.</summary>
/// <param name="Mean">Whole piece. [kg kg⁻¹]</param>
/// <param name="Core">Inner tenth of the volume farthest from any face, bark among them. [kg kg⁻¹]</param>
/// <param name="Shell">Outer 6 mm under bare faces across the grain. [kg kg⁻¹]</param>
/// <param name="End">Outer 6 mm of end grain. [kg kg⁻¹]</param>
/// <param name="CoreCelsius">Temperature of the core. [°C]</param>
/// <param name="MassKilograms">Mass of the piece. [kg]</param>
/// <param name="LossFraction">Part of the start mass lost.</param>
public sealed record MoistureSeries(
    double[] Mean, double[] Core, double[] Shell, double[] End, double[] CoreCelsius, double[] MassKilograms, double[] LossFraction);
