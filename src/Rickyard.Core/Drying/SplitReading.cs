namespace Rickyard.Core.Drying;

/// <summary>One piece at one time.</summary>
/// <param name="Mean">Whole piece. [kg kg⁻¹]</param>
/// <param name="Core">Inner tenth. [kg kg⁻¹]</param>
/// <param name="Shell">Outer 6 mm under bare faces. [kg kg⁻¹]</param>
/// <param name="End">Outer 6 mm of end grain. [kg kg⁻¹]</param>
/// <param name="Celsius">Temperature. [°C]</param>
/// <param name="Mass">Mass of the piece. [kg]</param>
/// <param name="OutsideShare">Part of the drop from core to fresh air that lies outside the wood, 0 to 1.</param>
public readonly record struct SplitReading(double Mean, double Core, double Shell, double End, double Celsius, double Mass, double OutsideShare);
