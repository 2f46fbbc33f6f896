using Rickyard.Core.Boxes.Schedules;
using Rickyard.HotBox;
using Rickyard.Web.Pictures.Schedules;
using static System.FormattableString;

namespace Rickyard.Schedules;

/// <summary>The pull list and the trade-off as tables.</summary>
internal static class ScheduleTables
{
    public const string PullAlignment = "lrrrrrrr";

    public const string TradeOffAlignment = "rrrrrrl";

    public static IReadOnlyList<string> PullHeads { get; } = ["class (pieces)", "pull, day", "at kg", "loaded", "all kg", "when pulled", "rest d", "in the end"];

    public static IReadOnlyList<string> TradeOffHeads { get; } = ["no.", "days", "kWh", "cost", "gap", "pulled at mean", "setting"];

    public static IEnumerable<IReadOnlyList<string>> Pulls(ScheduleAnswer answer) =>
        answer.Best.Classes.OrderBy(pull => pull.PullDay ?? double.MaxValue).Select(pull => Pull(answer, pull));

    public static IEnumerable<IReadOnlyList<string>> TradeOff(ScheduleAnswer answer) => TradeOffRow.Of(answer).Select(row => Choice(answer, row));

    private static IReadOnlyList<string> Pull(ScheduleAnswer answer, ClassPull pull)
    {
        var one = ScheduleWords.ClassOf(answer, pull);
        return
        [
            Invariant($"{one.Name} ({one.Pieces})"), pull.PullDay is { } day ? Invariant($"{day:0.0}") : "not in time", Known(Invariant($"{pull.MassAtPull:0.00}")),
            Invariant($"{pull.MassAtLoading:0.00}"), Known(Invariant($"{one.Pieces * pull.MassAtPull:0.0}")), Known(ClassTable.Three(pull.MeanAtPull, pull.CoreAtPull, pull.ShellAtPull)),
            Known(Invariant($"{pull.RestDays:0.0}")), ClassTable.Three(pull.Mean, pull.Core, pull.Shell),
        ];

        string Known(string figure) => pull.PullDay is null ? "–" : figure;
    }

    private static IReadOnlyList<string> Choice(ScheduleAnswer answer, TradeOffRow row) =>
    [
        Invariant($"{row.Number}"), Invariant($"{row.Candidate.Days:0.0}"), Invariant($"{EnergySentences.Kilowatthours(row.Candidate.EnergyJoules):0}"),
        ScheduleWords.Cost(answer, row.Candidate) ?? "–", Invariant($"{100 * row.Candidate.Gap:0.0}"),
        row.Candidate.PullMean is { } mean ? Invariant($"{100 * mean:0.0}") : "own each", ScheduleWords.ShortSetting(row.Candidate) + (row.IsChosen ? " (chosen)" : ""),
    ];
}
