using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>What was understood of a table of readings, and what was not.</summary>
/// <param name="Kept">To learn from, in the order given.</param>
/// <param name="LeftOut">Kept out, each with its reasons, in the order given.</param>
/// <param name="Notes">Sentences on what was kept but should be looked at: a column that is not read, two unlike readings of one place.</param>
public sealed record ObservationLog(IReadOnlyList<Observation> Kept, IReadOnlyList<LeftOutReading> LeftOut, IReadOnlyList<string> Notes);
