namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>What a log says of one schedule.</summary>
/// <param name="Schedule">The schedule.</param>
/// <param name="Proof">The first stretch that held its temperature long enough, or null.</param>
/// <param name="Longest">The longest stretch at or above its temperature, long enough or not; null where there is none.</param>
/// <param name="Slowest">Name of the sensor that decided: the last to get there before the stretch, or, without one, the one that got least warm.</param>
/// <param name="Warmest">The most that the coldest sensor read at any one time, margin taken off; NaN where no reading is whole. [°C]</param>
public sealed record ScheduleFinding(HeatSchedule Schedule, HeatHold? Proof, HeatHold? Longest, string Slowest, double Warmest)
{
    /// <summary>Whether the schedule was held.</summary>
    public bool IsHeld => Proof is not null;

    /// <summary>When the minutes were full; null where they were not. [s]</summary>
    public double? FullAt => Proof is { } proof ? proof.Start + 60 * Schedule.Minutes : null;
}
