namespace Rickyard.Core.Measuring.Observed;

/// <summary>The moisture a supplier promised of the lot: weak, and more often too low than too high (common practice, no source).</summary>
/// <param name="From">When and on what.</param>
/// <param name="Moisture">Mean of the pieces. [kg kg⁻¹]</param>
public sealed record PromiseObservation(Origin From, double Moisture) : Observation(From);
