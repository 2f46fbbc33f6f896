namespace Rickyard.Core.Measuring.Observed;

/// <summary>A pin-meter reading.</summary>
/// <param name="From">When and on what.</param>
/// <param name="Pins">Where and how the pins went in.</param>
/// <param name="Reading">What the meter showed.</param>
/// <param name="Corrected">What that means in this wood.</param>
public sealed record PinObservation(Origin From, Pins Pins, PinReading Reading, CorrectedReading Corrected) : Observation(From);
