namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What a schedule is searched for.</summary>
/// <param name="Goal">Usable now, or even.</param>
/// <param name="BandLow">Lower edge of the cook's band. [kg kg⁻¹]</param>
/// <param name="BandHigh">Upper edge. [kg kg⁻¹]</param>
/// <param name="LatestDays">When the splits are needed, from loading. [d]</param>
/// <param name="HighestCelsius">Warmest setting to be tried. [°C]</param>
/// <param name="Members">Members behind the bands of the schedule chosen; a multiple of four.</param>
/// <param name="Seed">Seed of every random draw.</param>
public sealed record ScheduleRequest(
    ChargeGoal Goal, double BandLow, double BandHigh, double LatestDays, double HighestCelsius, int Members = 64, int Seed = 1);
