using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Learn;

/// <summary>What was found of a case's observations.</summary>
/// <param name="Kept">Those that can be learnt from.</param>
/// <param name="LeftOut">Rows that cannot, each with its reason.</param>
/// <param name="Notes">Sentences on what was kept but should be looked at.</param>
internal sealed record FoundObservations(IReadOnlyList<Observation> Kept, IReadOnlyList<LeftOutRow> LeftOut, IReadOnlyList<string> Notes);
