namespace Rickyard.Core.Measuring.Observed;

/// <summary>A moisture found by drying to constant mass.</summary>
/// <param name="From">When and on what.</param>
/// <param name="Part">Of what.</param>
/// <param name="Moisture">[kg kg⁻¹]</param>
/// <param name="Spread">Standard deviation. [kg kg⁻¹]</param>
public sealed record OvenObservation(Origin From, OvenPart Part, double Moisture, double Spread) : Observation(From);
