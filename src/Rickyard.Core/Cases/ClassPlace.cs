using Rickyard.Core.Boxes;

namespace Rickyard.Core.Cases;

/// <summary>How a class lies in the box.</summary>
/// <param name="Shelf">Where in the stream.</param>
/// <param name="Packing">How close together.</param>
internal sealed record ClassPlace(ShelfPlace Shelf, ClassPacking Packing)
{
    private static readonly Dictionary<string, ShelfPlace> Shelves = new(StringComparer.OrdinalIgnoreCase)
    {
        ["warm"] = ShelfPlace.Warm, ["middle"] = ShelfPlace.Middle, ["cool"] = ShelfPlace.Cool,
    };

    private static readonly Dictionary<string, ClassPacking> Packings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["loose"] = ClassPacking.Loose, ["usual"] = ClassPacking.Usual, ["tight"] = ClassPacking.Tight,
    };

    /// <summary>Where nothing was said.</summary>
    public static ClassPlace Usual(CaseFindings findings)
    {
        foreach (var key in new[] { "shelf", "packing" }) AssumeUsual(key, findings);
        return new(ShelfPlace.Middle, ClassPacking.Usual);
    }

    public static ClassPlace Read(CaseObject entry, CaseFindings findings)
    {
        foreach (var key in new[] { "shelf", "packing" }.Where(key => !entry.Has(key))) AssumeUsual(key, findings);
        return new(entry.Choice("shelf", Shelves) ?? ShelfPlace.Middle, entry.Choice("packing", Packings) ?? ClassPacking.Usual);
    }

    private static void AssumeUsual(string key, CaseFindings findings) => findings.Assume(key == "shelf"
        ? "Where in the box the splits lie was not given: in the middle of the stream."
        : "How close the splits lie was not given: usual, air reaches 80 % of their faces (judgement).");
}
