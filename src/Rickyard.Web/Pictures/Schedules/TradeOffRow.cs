using Rickyard.Core.Boxes.Schedules;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>A schedule worth choosing between, with the number by which table and plot call it.</summary>
/// <param name="Number">From 1, quickest first.</param>
/// <param name="Candidate">The schedule.</param>
/// <param name="IsChosen">Whether it is the one chosen.</param>
public sealed record TradeOffRow(int Number, ScheduleCandidate Candidate, bool IsChosen)
{
    private const int Most = 8;

    /// <summary>At most eight of an answer, evenly over all that none beats, the chosen one among them.</summary>
    public static IReadOnlyList<TradeOffRow> Of(ScheduleAnswer answer)
    {
        var all = answer.TradeOff.ToList();
        if (!all.Contains(answer.Best)) all.Add(answer.Best);
        all = [.. all.OrderBy(one => one.Days).ThenBy(one => one.EnergyJoules)];
        return [.. Picked(all, all.IndexOf(answer.Best)).Select((index, row) => new TradeOffRow(row + 1, all[index], all[index] == answer.Best))];
    }

    private static IEnumerable<int> Picked(List<ScheduleCandidate> all, int best)
    {
        if (all.Count <= Most) return Enumerable.Range(0, all.Count);
        var spread = Enumerable.Range(0, Most).Select(row => (int)Math.Round((double)row * (all.Count - 1) / (Most - 1))).ToList();
        if (!spread.Contains(best)) spread[spread.Select((index, row) => (Away: Math.Abs(index - best), row)).Min().row] = best;
        return spread.Order();
    }
}
