namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What can be changed to make a goal possible.</summary>
public enum CureKind
{
    /// <summary>A later date.</summary>
    MoreDays,

    /// <summary>Splitting finer.</summary>
    FinerSplits,

    /// <summary>Fewer pieces in the charge.</summary>
    FewerPieces,

    /// <summary>Wood that starts drier.</summary>
    DrierStart,
}
