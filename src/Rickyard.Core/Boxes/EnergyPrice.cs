namespace Rickyard.Core.Boxes;

/// <summary>What energy costs the user, in money of their own.</summary>
/// <param name="Electricity">Per kWh bought; null where not said.</param>
/// <param name="Gas">Per kWh bought; null where not said.</param>
/// <param name="Currency">As they write it, such as "$".</param>
public sealed record EnergyPrice(double? Electricity, double? Gas, string Currency);
