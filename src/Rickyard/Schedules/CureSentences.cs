using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.Schedules;

/// <summary>What would make a goal possible.</summary>
internal static class CureSentences
{
    public static string Of(ScheduleCure cure) => cure.To is { } to ? Works(cure, to) : $"{Name(cure.Kind)} alone would not do, as far as was tried.";

    /// <summary>"more_days", as JSON names it.</summary>
    public static string Key(CureKind kind) => kind switch
    {
        CureKind.MoreDays => "more_days",
        CureKind.FinerSplits => "finer_splits",
        CureKind.FewerPieces => "fewer_pieces",
        _ => "drier_start",
    };

    /// <summary>The unit of a cure's numbers in JSON, and what takes the unit inside to it.</summary>
    public static (string Name, double Scale) Unit(CureKind kind) => kind switch
    {
        CureKind.MoreDays => ("days", 1),
        CureKind.FinerSplits => ("mm", 1000),
        CureKind.FewerPieces => ("pieces", 1),
        _ => ("% dry basis", 100),
    };

    private static string Works(ScheduleCure cure, double to) => cure.Kind switch
    {
        CureKind.MoreDays => Invariant($"More days: {to:0.0} instead of {cure.From:0.0}."),
        CureKind.FinerSplits => Invariant($"Finer splits: every piece {100 * to / cure.From:0} % as thick as now, so the largest about {1000 * to:0} mm across instead of {1000 * cure.From:0}."),
        CureKind.FewerPieces => Invariant($"Fewer pieces at once: about {to:0} instead of {cure.From:0}, of every class alike."),
        _ => $"A drier start: the wettest core at {Say.Moisture(to)} instead of {Say.Moisture(cure.From)}, by a longer time on the rack.",
    };

    private static string Name(CureKind kind) => kind switch
    {
        CureKind.MoreDays => "More days",
        CureKind.FinerSplits => "Finer splits",
        CureKind.FewerPieces => "Fewer pieces at once",
        _ => "A drier start",
    };
}
