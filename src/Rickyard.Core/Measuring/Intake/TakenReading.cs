using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>A reading that was understood by itself.</summary>
/// <param name="Given">As it was written.</param>
/// <param name="Observation">What it is.</param>
/// <param name="Wood">Of what.</param>
/// <param name="Kind">Of which kind.</param>
/// <param name="Basis">Of its moisture; null where it has none.</param>
internal sealed record TakenReading(GivenReading Given, Observation Observation, IntakeWood Wood, ReadingKind Kind, MoistureBasis? Basis);
