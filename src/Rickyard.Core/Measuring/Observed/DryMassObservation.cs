namespace Rickyard.Core.Measuring.Observed;

/// <summary>The oven-dry mass of a whole marked split, calculated from a section or dried out at the end.</summary>
/// <param name="From">When and on what.</param>
/// <param name="Kilograms">[kg]</param>
/// <param name="Spread">Standard deviation. [kg]</param>
public sealed record DryMassObservation(Origin From, double Kilograms, double Spread) : Observation(From);
