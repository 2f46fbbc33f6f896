using System.Globalization;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Cases;

/// <summary>Reads the readings of a case by the rules of a table of readings; here whatever is wrong is a problem of the case.</summary>
internal static class ReadingsSection
{
    private const string Wanted = "Give it as in a table of readings (docs/readings.md), in quotation marks; leave it out where there is none.";

    /// <summary>The observations.</summary>
    /// <param name="root">The whole file.</param>
    /// <param name="drying">What was understood of it, or null where that is too little to read a reading by.</param>
    /// <param name="findings">Where problems go.</param>
    public static IReadOnlyList<Observation> Read(CaseObject root, DryingCase? drying, CaseFindings findings)
    {
        if (!root.Has("readings")) return [];
        var groups = root.Groups("readings", ReadingColumns.All);
        if (groups.Count > ReadingTable.MostRows) findings.Wrong("readings", $"There are {groups.Count} of them.", $"Give at most {ReadingTable.MostRows}.");
        List<GivenReading> given = [.. groups.Select(Given)];
        if (drying is null || given.Count is 0 or > ReadingTable.MostRows) return [];
        if (!drying.Start.IsDated)
        {
            findings.Wrong(ObservationIntake.Undated);
            return [];
        }

        return Take(drying, given, findings);
    }

    private static IReadOnlyList<Observation> Take(DryingCase drying, IReadOnlyList<GivenReading> given, CaseFindings findings)
    {
        var log = new ObservationIntake(drying).Take(given);
        foreach (var problem in log.LeftOut.SelectMany(row => row.Problems)) findings.Wrong(problem);
        foreach (var note in log.Notes) findings.Assume(note);
        findings.Assume(string.Create(CultureInfo.InvariantCulture, $"This case carries {log.Kept.Count} reading{(log.Kept.Count == 1 ? "" : "s")}; `rickyard learn` uses them."));
        return log.Kept;
    }

    // Its path ends with its place in the list: readings[3].
    private static GivenReading Given(CaseObject group) => new(
        "readings",
        1 + int.Parse(group.Path.AsSpan(group.Path.IndexOf('[', StringComparison.Ordinal) + 1).TrimEnd(']'), CultureInfo.InvariantCulture),
        $"{group.Path}.",
        group.Keys.ToDictionary(key => key, key => group.Text(key, Wanted) ?? ""));
}
