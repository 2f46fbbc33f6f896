using Rickyard.Core.Boxes;

namespace Rickyard.Core.Cases;

/// <summary>Reads the charge of a hot box: classes of splits that share its air.</summary>
internal static class ChargeSection
{
    private const int MostClasses = 24;
    private const int MostPieces = 1_000_000;
    private const double UsualSpread = 0.10;

    private static readonly string[] Keys = ["name", "wood", "split", "pieces", "size spread", "start", "shelf", "packing"];

    /// <summary>The case of the first class, with the whole charge in it.</summary>
    public static DryingCase? Read(CaseObject root, string name, CaseFindings findings)
    {
        var periods = AirSection.Read(root, findings);
        if (periods.Count > 0 && periods is not [BoxPeriod]) findings.Wrong("charge", "A charge lies in a hot box, but the air is not one.", "Give \"air\": { \"box\": … }, or \"lot\" and \"split\" in place of \"charge\".");
        if (root.Has("lot")) findings.Wrong("lot", "Each class of the charge has its own number of pieces.", "Give \"pieces\" and \"size spread\" in the classes and leave \"lot\" out.");
        var entries = root.Groups("charge", Keys);
        if (entries.Count > MostClasses) findings.Wrong("charge", $"It has {entries.Count} classes.", $"Give at most {MostClasses}; splits of about one size and wood can be one class.");
        AskUnused(root, entries, findings);
        var parts = ChargeDay.Same(root, [.. entries.Select(entry => Parts(root, entry, findings))], periods.Any(NeedsDay), findings);
        var run = RunSection.Read(root, periods, findings);
        return Charge(root, name, entries, parts, periods, run, findings);
    }

    /// <summary>The case of one lot with itself as the only class.</summary>
    public static DryingCase Only(CaseObject root, DryingCase drying, CaseFindings findings)
    {
        var place = ClassPlace.Usual(findings);
        var only = new ChargeClass(drying.Name, drying, drying.Pieces ?? 1, place.Shelf, place.Packing.ExposedShare);
        ChargeRoom.Ask(root, [(only, place.Packing)], findings);
        return drying with { Charge = [only] };
    }

    /// <summary>Whether a period lives by the calendar.</summary>
    public static bool NeedsDay(Period period) => period is RackPeriod or BoxPeriod { Plan.Ambient.Weather: not null };

    private static DryingCase? Charge(
        CaseObject root, string name, IReadOnlyList<CaseObject> entries, IReadOnlyList<CaseParts> parts, IReadOnlyList<Period> periods, RunSection run, CaseFindings findings)
    {
        List<(ChargeClass Class, ClassPacking Packing)> classes = [];
        for (var i = 0; i < entries.Count; i++)
        {
            var called = NameOf(entries[i], i, classes, findings);
            var place = ClassPlace.Read(entries[i], findings);
            if (parts[i].With(called, periods, run) is { } wood) classes.Add((new(called, wood, wood.Pieces!.Value, place.Shelf, place.Packing.ExposedShare), place.Packing));
        }

        if (classes.Count == 0 || classes.Count < entries.Count) return null;
        ChargeRoom.Ask(root, classes, findings);
        return classes[0].Class.Wood with { Name = name, Charge = [.. classes.Select(one => one.Class)] };
    }

    private static CaseParts Parts(CaseObject root, CaseObject entry, CaseFindings findings)
    {
        CaseObject From(string key) => entry.Has(key) || !root.Has(key) ? entry : root;
        var wood = WoodSection.Read(From("wood"), findings);
        var start = StartSection.Read(From("start"), wood, false, findings);
        return new(wood, start, SplitSection.Read(From("split"), wood, start, findings), Lot(entry));
    }

    private static LotSection Lot(CaseObject entry)
    {
        if (!entry.Has("pieces")) entry.Missing("pieces", $"Give how many splits the class has, 1 to {MostPieces}, without quotation marks.");
        return new(
            entry.Count("pieces", 1, MostPieces) ?? 1,
            entry.QuantityOr("size spread", CaseLimits.SizeSpread, UsualSpread, "How the sizes within a class of the charge differ was not given: a standard deviation of 10 % of the width (judgement: sorted by eye)."));
    }

    private static string NameOf(CaseObject entry, int index, IEnumerable<(ChargeClass Class, ClassPacking Packing)> before, CaseFindings findings)
    {
        var name = entry.Text("name", "Give a name, or leave it out.") ?? $"class {index + 1}";
        if (before.Any(other => other.Class.Name.Equals(name, StringComparison.OrdinalIgnoreCase))) findings.Wrong(entry.PathOf("name"), $"Two classes are called {Quantities.Echo.Of(name)}.", "Give each a name of its own.");
        return name;
    }

    private static void AskUnused(CaseObject root, IReadOnlyList<CaseObject> entries, CaseFindings findings)
    {
        foreach (var key in new[] { "wood", "split", "start" }.Where(key => root.Has(key) && entries.Count > 0 && entries.All(entry => entry.Has(key))))
            if (key != "start" || ChargeDay.Of(root) is null) findings.Wrong(key, $"Every class of the charge has its own \"{key}\": this one is used by none.", "Leave it out here, or in the classes it is meant for.");
    }
}
