using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>What a reading found, before it is known when and on what.</summary>
/// <param name="Words">"12 % on the end grain".</param>
/// <param name="Basis">Of its moisture; null where it has none.</param>
/// <param name="Make">The observation.</param>
internal sealed record Sighting(string Words, MoistureBasis? Basis, Func<Origin, Observation> Make);
