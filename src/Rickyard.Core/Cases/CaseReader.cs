using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>
/// Reads a case file: JSON with comments and trailing commas allowed, every quantity a text with its unit (docs/case-file.md). Unknown keys
/// and impossible or contradictory values are problems, all reported at once; defaults for what was left out are said in the case.
/// </summary>
public static class CaseReader
{
    private static readonly string[] Keys = ["name", "wood", "split", "lot", "start", "air", "rack", "history", "run"];

    /// <summary>The case, or every problem in it.</summary>
    /// <param name="json">The whole text of the file.</param>
    /// <param name="fileName">Its name, for messages and as the name of a case that has none.</param>
    public static Result<DryingCase> Read(string json, string fileName)
    {
        var parsed = CaseJson.Parse(json, fileName);
        if (!parsed.TryGet(out var document)) return ResultOf.Failure<DryingCase>(parsed.Problems);
        using (document)
        {
            var findings = new CaseFindings();
            var drying = CaseObject.From(document.RootElement, "", Keys, findings) is { } root ? Read(root, fileName, findings) : null;
            return drying is not null && findings.Problems.Count == 0
                ? ResultOf.Success(drying with { Assumptions = findings.Assumptions, SourceText = json })
                : ResultOf.Failure<DryingCase>(findings.Problems);
        }
    }

    private static DryingCase? Read(CaseObject root, string fileName, CaseFindings findings)
    {
        var name = root.Text("name", "Give a name, or leave it out.") ?? Path.GetFileNameWithoutExtension(fileName);
        var wood = WoodSection.Read(root, findings);
        var periods = AirSection.Read(root, findings);
        var start = StartSection.Read(root, wood, periods.Any(period => period is RackPeriod), findings);
        var split = SplitSection.Read(root, wood, start, findings);
        var lot = LotSection.Read(root, findings);
        var run = RunSection.Read(root, periods, findings);
        if (split is { IsPolar: false } && periods.Any(period => period is SplitAgainPeriod))
            findings.Wrong("history", "A block has no pith to be split through again.", "Leave \"split again\" out, or give the piece as a wedge, half round or round.");
        return wood.Species is null || start is null || split is null || run.Days is null ? null : new()
        {
            Name = name,
            Species = wood.Species,
            BasicDensity = wood.BasicDensity!.Value,
            RateFactor = wood.RateFactor,
            Split = split,
            Pieces = lot.Pieces,
            SizeSpread = lot.SizeSpread,
            Start = start,
            Periods = periods,
            Days = run.Days.Value,
            ReportEvery = run.ReportEvery,
        };
    }
}
