using System.Globalization;
using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>Says times of a run as a person would: by the calendar where the start has a date, else by days from the start.</summary>
/// <param name="drying">The case.</param>
/// <param name="end">Last report. [d]</param>
internal sealed class RunClock(DryingCase drying, double end)
{
    private const double ShortRun = 14;

    /// <summary>Of a run.</summary>
    public RunClock(DryingRun run)
        : this(run.Case, run.Days[^1])
    {
    }

    /// <summary>Whether the calendar means anything.</summary>
    public bool IsDated { get; } = drying.Start.IsDated;

    /// <summary>Last report. [d]</summary>
    public double End { get; } = end;

    /// <summary>"14 May 2024", with the day of the run where it is short, or "day 43".</summary>
    public string Say(double day)
    {
        if (!IsDated) return $"day {DayNumber(day)}";
        var date = DateOf(day).ToString("d MMMM uuuu", CultureInfo.InvariantCulture);
        return End <= ShortRun ? $"{date} (day {DayNumber(day)})" : date;
    }

    /// <summary>"2 May to 1 June 2024": the year once where it is the same.</summary>
    public string Between(double? early, double? late) =>
        $"{(early is { } first ? SayBefore(first, late) : "the start")} to {(late is { } last ? Say(last) : "after the end of the run")}";

    /// <summary>Days from the start, with a decimal where the run is short.</summary>
    public string DayNumber(double day) => day.ToString(End <= ShortRun ? "0.0" : "0", CultureInfo.InvariantCulture);

    /// <summary>"2024-05-14", or null where the start has no date.</summary>
    public string? Iso(double day) => IsDated ? DateOf(day).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) : null;

    private string SayBefore(double day, double? later) => IsDated && End > ShortRun && later is { } last && DateOf(day).Year == DateOf(last).Year
        ? DateOf(day).ToString("d MMMM", CultureInfo.InvariantCulture)
        : Say(day);

    private LocalDate DateOf(double day) => drying.StartDate.AtMidnight().PlusSeconds((long)Math.Round(day * NodaConstants.SecondsPerDay)).Date;
}
