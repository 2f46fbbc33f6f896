using NodaTime;

namespace Rickyard.Core.Cases;

/// <summary>The one day on which a charge is loaded.</summary>
internal static class ChargeDay
{
    /// <summary>The day that the group at the top gives, or null.</summary>
    public static LocalDate? Of(CaseObject root) => StartSection.DayOf(root);

    /// <summary>The parts, all with the day that one of them or the top gives.</summary>
    public static IReadOnlyList<CaseParts> Same(CaseObject root, IReadOnlyList<CaseParts> parts, bool needed, CaseFindings findings)
    {
        List<LocalDate> days = [.. parts.Select(part => part.Start).Where(start => start is { IsDated: true }).Select(start => start!.At).Concat(Of(root) is { } top ? [top] : []).Distinct()];
        if (days.Count > 1) findings.Wrong("charge", $"Its classes start on different days: {string.Join(", ", days.Order().Select(Written))}.", "A charge is loaded at once: give \"at\" once, in \"start\" at the top.");
        if (needed && days.Count == 0 && findings.Problems.All(problem => !problem.Field.EndsWith("start.at", StringComparison.Ordinal))) findings.Wrong("start.at", "It is missing.", StartSection.WantedDay);
        return days.Count == 0 ? parts : [.. parts.Select(part => part with { Start = part.Start is { } start ? start with { At = days[0], IsDated = true } : null })];
    }

    private static string Written(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
