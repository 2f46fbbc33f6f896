using Rickyard.Core.Measuring.Observed;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>
/// Weighings of one marked split beside one another. Wood that dries loses mass; rain and damp air give some back: 2 % at once (a wet skin) and 1 % for each day between, at
/// most 15 % (from indoor-dry to wet through its skin), and three standard deviations of the weighings; judgement, no source. Of weighings that cannot all be right the largest number that can be stays,
/// the earlier where two such sets are alike.
/// </summary>
internal static class MassHistory
{
    private const double AtOnce = 0.02, EachDay = 0.01, Most = 0.15, Deviations = 3;

    public static IEnumerable<CrossFault> Find(IReadOnlyList<TakenReading> taken) => taken
        .Where(reading => reading.Observation is MassObservation)
        .GroupBy(reading => (reading.Observation.From.Class, Piece: reading.Observation.From.Piece.ToUpperInvariant()))
        .SelectMany(piece => OfPiece([.. piece.OrderBy(reading => reading.Observation.From.Day).ThenBy(reading => reading.Given.Line)]));

    private static IEnumerable<CrossFault> OfPiece(IReadOnlyList<TakenReading> weighings)
    {
        var chain = LongestChain(weighings);
        return Enumerable.Range(0, weighings.Count).Except(chain).Select(place => Fault(weighings, place, chain));
    }

    private static List<int> LongestChain(IReadOnlyList<TakenReading> weighings)
    {
        var (length, before) = (new int[weighings.Count], new int[weighings.Count]);
        for (var place = 0; place < weighings.Count; place++)
        {
            before[place] = -1;
            for (var earlier = 0; earlier < place; earlier++)
                if (length[earlier] > length[place] && Mass(weighings[place]).Kilograms <= Highest(weighings[earlier], weighings[place])) (length[place], before[place]) = (length[earlier], earlier);
            length[place]++;
        }

        List<int> chain = [];
        for (var place = Array.IndexOf(length, length.Max()); place >= 0; place = before[place]) chain.Insert(0, place);
        return chain;
    }

    private static MassObservation Mass(TakenReading reading) => (MassObservation)reading.Observation;

    /// <summary>The most a split can weigh after an earlier weighing. [kg]</summary>
    private static double Highest(TakenReading earlier, TakenReading later)
    {
        var (first, second) = (Mass(earlier), Mass(later));
        var days = second.From.Day - first.From.Day;
        if (days <= 0) return double.PositiveInfinity;
        var gain = Math.Min(Most, AtOnce + EachDay * days);
        return first.Kilograms * (1 + gain) + Deviations * Math.Sqrt(first.Spread * first.Spread + second.Spread * second.Spread);
    }

    private static CrossFault Fault(IReadOnlyList<TakenReading> weighings, int place, IReadOnlyList<int> chain)
    {
        var earlier = chain.Where(other => other < place && !Fits(other, place)).Cast<int?>().LastOrDefault();
        var later = chain.Where(other => other > place && !Fits(place, other)).Cast<int?>().FirstOrDefault();
        var what = earlier is { } before
            ? $"It is {Gain(weighings[before], weighings[place])} heavier than line {weighings[before].Given.Line} says ({weighings[before].Observation.From.Words}), more than rain and damp air give back."
            : $"By line {weighings[later!.Value].Given.Line} ({weighings[later.Value].Observation.From.Words}) the split would have become {Gain(weighings[place], weighings[later.Value])} heavier since, more than rain and damp air give back.";
        return new(weighings[place], ReadingColumns.Value, what, "Check the number on the piece and the unit, and that no snow, ice or fallen bark was weighed; then weigh it again.");

        bool Fits(int one, int other) => Mass(weighings[other]).Kilograms <= Highest(weighings[one], weighings[other]);
    }

    private static string Gain(TakenReading earlier, TakenReading later) => Invariant($"{100 * (Mass(later).Kilograms / Mass(earlier).Kilograms - 1):0} %");
}
