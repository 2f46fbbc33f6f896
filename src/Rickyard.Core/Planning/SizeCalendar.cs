using NodaTime;
using Rickyard.Core.Cases;

namespace Rickyard.Core.Planning;

/// <summary>The largest width that is ready in time, for each month of stacking and each span until it is needed.</summary>
public sealed record SizeCalendar
{
    /// <summary>The case; its own size and day of start do not count.</summary>
    public required DryingCase Case { get; init; }

    /// <summary>What was asked.</summary>
    public required SizeCalendarRequest Request { get; init; }

    /// <summary>Days of stacking: the first of each month, January first.</summary>
    public required IReadOnlyList<LocalDate> Starts { get; init; }

    /// <summary>Largest width of <see cref="SizeSteps.Coarse"/> by start and span; null where not even the smallest is ready in time. [m]</summary>
    public required IReadOnlyList<IReadOnlyList<double?>> Widths { get; init; }

    /// <summary>Version of the model and its constants.</summary>
    public required string ModelVersion { get; init; }

    /// <summary>Wall time, set by whoever holds the clock. [s]</summary>
    public double Seconds { get; init; }
}
