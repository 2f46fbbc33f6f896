using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>
/// Readings of one kind on both bases: one of them is most likely a slip. Those on dry basis, which meters and ovens are read on, stay; those on wet basis are left out,
/// with the number that would be meant.
/// </summary>
internal static class MixedBases
{
    public static IEnumerable<CrossFault> Find(IReadOnlyList<TakenReading> taken) => taken
        .GroupBy(reading => reading.Kind)
        .Where(kind => kind.Any(reading => reading.Basis == MoistureBasis.Dry))
        .SelectMany(kind => kind.Where(reading => reading.Basis == MoistureBasis.Wet).Select(reading => Fault(reading, kind.First(other => other.Basis == MoistureBasis.Dry))));

    private static CrossFault Fault(TakenReading wet, TakenReading dry) => new(
        wet,
        ReadingColumns.Unit,
        $"It is on wet basis, while other readings of the kind \"{KindWords.Of(wet.Kind)}\" are on dry basis (line {dry.Given.Line}).",
        Invariant($"Give all of a kind on one basis: this one as {100 * SameSpot.MoistureOf(wet.Observation):0.#} % dry basis, if wet was meant."));
}
