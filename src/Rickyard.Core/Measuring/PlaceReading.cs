namespace Rickyard.Core.Measuring;

/// <summary>Moisture that pins feel at a place, corrected for wood and temperature.</summary>
/// <param name="Pins">Where and how.</param>
/// <param name="Moisture">[kg kg⁻¹]</param>
public readonly record struct PlaceReading(Pins Pins, double Moisture);
