namespace Rickyard.Core.Measuring.Observed;

/// <summary>A weighing of a marked split.</summary>
/// <param name="From">When and on what.</param>
/// <param name="Kilograms">[kg]</param>
/// <param name="Spread">Standard deviation of the weighing. [kg]</param>
public sealed record MassObservation(Origin From, double Kilograms, double Spread) : Observation(From);
