using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using static System.FormattableString;

namespace Rickyard.Core.Planning;

/// <summary>What keeps a question about sizes from having an answer.</summary>
internal static class SizeProblems
{
    private const double ShortestDays = 1.0 / 24, LongestDays = 3650;

    /// <summary>Problems of one question.</summary>
    internal static IEnumerable<Problem> Of(DryingCase drying, SizeRequest request)
    {
        if (!(request.NeededDays >= ShortestDays)) yield return TooSoon(drying, request.NeededDays);
        if (request.NeededDays > LongestDays) yield return new("needed by", Invariant($"That is {request.NeededDays / 365:0} years after the start."), "Give a time of 1 hour to 10 years after the start.");
        foreach (var problem in Of(drying, request.BandHigh, request.Confidence)) yield return problem;
    }

    /// <summary>Problems of a chart of the months.</summary>
    internal static IEnumerable<Problem> Of(DryingCase drying, SizeCalendarRequest request)
    {
        if (drying.Periods is not [RackPeriod])
            yield return new("air", "The chart has a line for each month of stacking, but the air of this case is not a rack outdoors from start to end.", "Give \"air\" as \"normals\" or \"weather\" for a chart; ask for one date without a chart in any air.");
        foreach (var problem in Of(drying, request.BandHigh, request.Confidence)) yield return problem;
    }

    private static IEnumerable<Problem> Of(DryingCase drying, double bandHigh, double confidence)
    {
        if (confidence is not (>= 0.5 and <= 0.99))
            yield return new("confidence", Invariant($"A confidence of {100 * confidence:0.##} % cannot be asked for."), "Give 50 to 99 %, such as \"90 %\".");
        if (drying.Start.Core <= bandHigh)
            yield return new("start.moisture", Invariant($"The core starts at {100 * drying.Start.Core:0.#} % dry basis, which is not above the {100 * bandHigh:0.#} % asked for: every size is ready."), "Give the moisture it has when it is split, or a lower band.");
        if (drying.Periods.Any(period => period is SplitAgainPeriod))
            yield return new("history", "The wood is split again on its way, so that it has no one size.", "Leave \"split again\" out, and ask for the size it has from the start.");
    }

    private static Problem TooSoon(DryingCase drying, double days)
    {
        var given = drying.Start.IsDated ? Invariant($"The wood is needed {Distance(days)} the start, {drying.StartDate:uuuu-MM-dd}.") : "The wood is needed before it has dried at all.";
        return new("needed by", given, "Give a time of 1 hour to 10 years after the start.");
    }

    private static string Distance(double days) => days < 0 ? Invariant($"{-days:0.#} days before") : "at";
}
