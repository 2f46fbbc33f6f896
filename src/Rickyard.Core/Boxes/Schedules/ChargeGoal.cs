namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What a charge is dried for.</summary>
public enum ChargeGoal
{
    /// <summary>The core in the cook's band on the day; the shell may be drier.</summary>
    UsableNow,

    /// <summary>Core, shell and mean all near the band.</summary>
    Even,
}
