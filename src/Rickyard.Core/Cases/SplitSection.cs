using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Cases;

/// <summary>Reads the typical piece: its shape, and its size or a mass to guess the size from.</summary>
internal static class SplitSection
{
    // From this start moisture up the piece is as good as green: what it weighs now is its green mass.
    private const double GreenFrom = 0.30;

    private static readonly Dictionary<string, SplitShape> Shapes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["wedge"] = SplitShape.Wedge,
        ["half round"] = SplitShape.HalfRound,
        ["round"] = SplitShape.Round,
        ["inner wedge"] = SplitShape.InnerWedge,
        ["block"] = SplitShape.Block,
    };

    private static readonly string[] SizeKeys = ["radius", "inner radius", "angle", "diameter", "width", "height"];

    public static Split? Read(CaseObject root, WoodSection wood, CaseStart? start, CaseFindings findings)
    {
        if (root.NeededGroup("split", ["shape", "length", "bark", "green mass", .. SizeKeys]) is not { } split) return null;
        var length = split.NeededQuantity("length", CaseLimits.AlongGrain);
        var shape = ShapeOf(split);
        var bark = BarkOf(split, shape, findings);
        var sizes = SizeKeys.Where(split.Has).ToDictionary(key => key, key => split.Quantity(key, key == "angle" ? CaseLimits.Opening : CaseLimits.AcrossGrain));
        var mass = split.Quantity("green mass", CaseLimits.PieceMass);
        if (shape is not { } known) return null;
        var complete = HasRightSizes(split, known, findings);
        if (!complete || length is null || sizes.Values.Any(size => size is null)) return null;
        return split.Has("green mass")
            ? FromMass(known, length.Value, mass, bark, wood, start, findings)
            : FromSizes(split, known, Length.FromMetres(length.Value), sizes, bark, findings);
    }

    private static SplitShape? ShapeOf(CaseObject split)
    {
        if (!split.Has("shape")) split.Missing("shape", $"Give {CaseObject.Listed([.. Shapes.Keys], "or")}.");
        return split.Choice("shape", Shapes);
    }

    private static bool BarkOf(CaseObject split, SplitShape? shape, CaseFindings findings)
    {
        if (shape is not SplitShape.Block) return split.FlagOr("bark", true, "Whether the bark is on was not said: it is on.");
        if (split.FlagOr("bark", false, "A block has no bark.")) findings.Wrong(split.PathOf("bark"), "A block is squared wood and has no bark.", "Leave bark out, or give false.");
        return false;
    }

    private static string[] SizesOf(SplitShape shape) => shape switch
    {
        SplitShape.Wedge => ["radius", "angle"],
        SplitShape.InnerWedge => ["inner radius", "radius", "angle"],
        SplitShape.Block => ["width", "height"],
        _ => ["diameter"],
    };

    private static bool HasRightSizes(CaseObject split, SplitShape shape, CaseFindings findings)
    {
        var name = Shapes.First(pair => pair.Value == shape).Key;
        var wanted = SizesOf(shape);
        var byMass = split.Has("green mass");
        var allowed = shape == SplitShape.InnerWedge ? $"Give {CaseObject.Listed(wanted)}." : $"Give {CaseObject.Listed(wanted)}, or \"green mass\" alone.";
        if (byMass && shape == SplitShape.InnerWedge) findings.Wrong(split.PathOf("green mass"), "An inner wedge has two radii; its size cannot be guessed from a mass.", allowed);
        foreach (var key in SizeKeys.Where(key => split.Has(key) && (byMass || !wanted.Contains(key))))
            findings.Wrong(split.PathOf(key), byMass ? "The size is given twice: by \"green mass\" and by dimensions." : $"A {name} has no \"{key}\".", allowed);
        foreach (var key in wanted.Where(key => !byMass && !split.Has(key))) split.Missing(key, allowed);
        return byMass ? shape != SplitShape.InnerWedge && !SizeKeys.Any(split.Has) : SizeKeys.All(key => split.Has(key) == wanted.Contains(key));
    }

    private static Split? FromSizes(CaseObject split, SplitShape shape, Length length, Dictionary<string, double?> sizes, bool bark, CaseFindings findings)
    {
        Length Across(string key) => Length.FromMetres(sizes[key]!.Value);
        Angle Opening() => Angle.FromDegrees(sizes["angle"]!.Value);
        if (shape == SplitShape.InnerWedge && sizes["inner radius"] >= sizes["radius"])
        {
            findings.Wrong(split.PathOf("inner radius"), $"It is {Across("inner radius")}, not below the radius of {Across("radius")}.", "Give the radius at which the heart was split off, below \"radius\".");
            return null;
        }

        return shape switch
        {
            SplitShape.Wedge => Split.Wedge(Across("radius"), Opening(), length, bark),
            SplitShape.HalfRound => Split.HalfRound(Across("diameter"), length, bark),
            SplitShape.Round => Split.Round(Across("diameter"), length, bark),
            SplitShape.InnerWedge => Split.InnerWedge(Across("inner radius"), Across("radius"), Opening(), length, bark),
            _ => Split.Block(Across("width"), Across("height"), length),
        };
    }

    private static Split? FromMass(SplitShape shape, double length, double? mass, bool bark, WoodSection wood, CaseStart? start, CaseFindings findings)
    {
        if (mass is null || wood.BasicDensity is not { } density || wood.Species is not { } species || start is null) return null;
        var moisture = start.Core >= GreenFrom ? start.Core : Math.Min(species.GreenMoisture.Mean, wood.MaximumMoisture);
        var split = Split.FromMass(shape, Length.FromMetres(length), Mass.FromKilograms(mass.Value), Density.FromKilogramsPerCubicMetre(density * (1 + moisture)), bark);
        findings.Assume($"{split.Guess} Green is taken as {MoistureContent.FromFraction(moisture)}, the bark as wood.");
        return split;
    }
}
