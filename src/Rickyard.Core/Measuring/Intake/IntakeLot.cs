using NodaTime;
using Rickyard.Core.Cases;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>What the readings of a case must fit: its days, and its wood or the classes of its charge.</summary>
/// <param name="Start">Midnight of its first day, local standard time.</param>
/// <param name="Days">Length of its run. [d]</param>
/// <param name="Woods">One, or one for each class.</param>
/// <param name="Today">The day on which it is read, or null where nobody knows.</param>
internal sealed record IntakeLot(LocalDateTime Start, double Days, IReadOnlyList<IntakeWood> Woods, LocalDate? Today)
{
    /// <summary>Whether a piece must name its class.</summary>
    public bool HasClasses => Woods.Count > 1;

    public static IntakeLot Of(DryingCase drying, LocalDate? today) => new(
        drying.StartDate.AtMidnight(),
        drying.Days,
        drying.Charge.Count == 0 ? [new("", drying)] : [.. drying.Charge.Select(one => new IntakeWood(one.Name, one.Wood))],
        today);
}
