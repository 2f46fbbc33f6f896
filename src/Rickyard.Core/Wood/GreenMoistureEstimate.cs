namespace Rickyard.Core.Wood;

/// <summary>Moisture of a freshly cut split of heart- and sapwood, as a spread.</summary>
/// <param name="Mean">Dry basis. [kg kg⁻¹]</param>
/// <param name="Spread">Standard deviation from split to split and tree to tree. [kg kg⁻¹]</param>
/// <param name="Rule">How it came from the published values, in words.</param>
public sealed record GreenMoistureEstimate(double Mean, double Spread, string Rule);
