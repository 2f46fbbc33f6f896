using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>Readings of one time, piece, kind and place: the same one twice counts once; unlike ones are both kept and told.</summary>
internal static class TwiceGiven
{
    /// <summary>Every repetition but the first.</summary>
    public static IEnumerable<CrossFault> Find(IReadOnlyList<TakenReading> taken) => taken
        .GroupBy(reading => (SameSpot.Of(reading.Observation), SameSpot.Found(reading.Observation)))
        .SelectMany(same => same.Skip(1).Select(again => Fault(again, same.First())));

    /// <summary>A sentence for each spot of a marked split with more than one answer.</summary>
    public static IEnumerable<string> Unlike(IEnumerable<TakenReading> kept) => kept
        .Where(reading => reading.Observation.From.Piece.Length > 0 || reading.Observation is PromiseObservation)
        .GroupBy(reading => SameSpot.Of(reading.Observation))
        .Where(spot => spot.Count() > 1)
        .Select(spot => $"Lines {string.Join(" and ", spot.Select(reading => reading.Given.Line))} say different things of one place at one time ({string.Join("; ", spot.Select(reading => reading.Observation.From.Words))}); all are kept.");

    private static CrossFault Fault(TakenReading again, TakenReading first) => new(
        again,
        ReadingColumns.Date,
        $"It says the same as line {first.Given.Line}: one of them counts.",
        again.Observation.From.Piece.Length > 0 ? "Take it out; or give the hours, if it was read twice." : "Take it out; or, if they are two splits, give each a name as its piece.");
}
