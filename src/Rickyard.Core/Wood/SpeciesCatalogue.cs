using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>Every wood known here, by any name people use. Loaded once, at first use; safe from several threads.</summary>
public static class SpeciesCatalogue
{
    private const int Suggestions = 3;
    private const int LongestEcho = 60;

    /// <summary>Woods with values of their own first, then stand-ins.</summary>
    public static IReadOnlyList<Species> All { get; } = SpeciesTable.Load();

    // After All: static members start in the order they are written.
    private static readonly Dictionary<string, Species> ByKey = Index(All);

    /// <summary>
    /// The wood of that common, botanical or trade name. Case, hyphens, spaces, plurals and word order with a comma do not matter; a
    /// misspelling is never taken for a wood but answered with the nearest three.
    /// </summary>
    /// <param name="name">What a person typed.</param>
    /// <param name="field">Key or form field it came from.</param>
    public static Result<Species> Find(string name, string field = "wood.species")
    {
        var key = SpeciesName.KeyOf(name);
        if (ByKey.TryGetValue(key, out var species)) return ResultOf.Success(species);
        return ResultOf.Failure<Species>([key.Length > 0 ? Unknown(name, key, field) : Empty(field)]);
    }

    private static Problem Empty(string field) =>
        new(field, "The species is empty.", "Give the wood's name, such as northern red oak, or unknown dense hardwood.");

    private static Problem Unknown(string name, string key, string field)
    {
        var nearest = ByKey
            .OrderBy(pair => SpeciesName.Distance(key, pair.Key)).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => pair.Value.CommonName).Distinct().Take(Suggestions).ToList();
        var echo = name.Length <= LongestEcho ? name : name[..LongestEcho] + "…";
        return new(
            field,
            $"\"{echo}\" is not a wood known here.",
            $"Did you mean {nearest[0]}, {nearest[1]} or {nearest[2]}? "
            + "If it is none of them, take unknown dense, medium or light hardwood, or unknown softwood.");
    }

    private static Dictionary<string, Species> Index(IEnumerable<Species> all)
    {
        var index = new Dictionary<string, Species>();
        foreach (var species in all)
        {
            foreach (var name in NamesOf(species))
                if (SpeciesName.KeyOf(name) is { Length: > 0 } key) index.TryAdd(key, species);
        }

        return index;
    }

    // A second botanical name stands in brackets behind the first.
    private static IEnumerable<string> NamesOf(Species species) =>
        [species.CommonName, .. species.LatinName.Split('(', ')'), .. species.Aliases];
}
