using Rickyard.Core.Boxes;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>
/// Reads a case file: JSON with comments and trailing commas allowed, every quantity a text with its unit (docs/case-file.md). Unknown keys
/// and impossible or contradictory values are problems, all reported at once; defaults for what was left out are said in the case.
/// </summary>
public static class CaseReader
{
    private static readonly string[] Keys = ["name", "wood", "split", "lot", "start", "air", "rack", "history", "charge", "run", "cook", "readings"];

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
        var drying = root.Has("charge") ? ChargeSection.Read(root, name, findings) : One(root, name, findings);
        var (cook, readings) = (CookSection.Read(root, findings), ReadingsSection.Read(root, drying, findings));
        return drying is null ? null : drying with { Cook = cook, Observations = readings };
    }

    private static DryingCase? One(CaseObject root, string name, CaseFindings findings)
    {
        var wood = WoodSection.Read(root, findings);
        var periods = AirSection.Read(root, findings);
        var start = StartSection.Read(root, wood, periods.Any(ChargeSection.NeedsDay), findings);
        var split = SplitSection.Read(root, wood, start, findings);
        var lot = LotSection.Read(root, findings);
        var run = RunSection.Read(root, periods, findings);
        if (split is { IsPolar: false } && periods.Any(period => period is SplitAgainPeriod))
            findings.Wrong("history", "A block has no pith to be split through again.", "Leave \"split again\" out, or give the piece as a wedge, half round or round.");
        var drying = new CaseParts(wood, start, split, lot).With(name, periods, run);
        return drying is not null && periods is [BoxPeriod] ? ChargeSection.Only(root, drying, findings) : drying;
    }
}
