using Rickyard.Core.Wood;

namespace Rickyard.Core.Cases;

/// <summary>The name a person probably meant.</summary>
public static class NearName
{
    /// <summary>The nearest of the known names where it is near enough to be a slip of the keys, or begins alike; else null.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="known">What is known.</param>
    public static string? Find(string given, IEnumerable<string> known)
    {
        var plain = Plain(given);
        if (plain.Length == 0) return null;
        var nearest = known.Select(name => (Name: name, Distance: SpeciesName.Distance(plain, Plain(name)), Begins: Begins(plain, Plain(name))))
            .OrderByDescending(near => near.Begins).ThenBy(near => near.Distance).FirstOrDefault();
        return nearest.Name is not null && (nearest.Begins || nearest.Distance <= Math.Max(1, plain.Length / 3)) ? nearest.Name : null;
    }

    private static bool Begins(string given, string name) => given.Length >= 3 && (name.StartsWith(given, StringComparison.Ordinal) || name.EndsWith(given, StringComparison.Ordinal));

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
