using System.Text;

namespace Rickyard.Core.Wood;

/// <summary>What makes two spellings of a wood's name the same, and how far apart two names are.</summary>
internal static class SpeciesName
{
    private const int LongestCompared = 60;

    /// <summary>Letters only, lower case, plurals undone, "oak, white" turned round, "wood", "tree" and the like dropped where a name remains.</summary>
    public static string KeyOf(string name)
    {
        var parts = name.Split(',', 2);
        var words = WordsOf(parts.Length == 2 ? parts[1] + " " + parts[0] : name);
        while (words.Count > 1 && words[^1] is "wood" or "firewood" or "tree" or "log" or "split") words.RemoveAt(words.Count - 1);
        return string.Concat(words);
    }

    /// <summary>Number of letters to insert, drop or change (Levenshtein), of the first 60.</summary>
    public static int Distance(string left, string right)
    {
        string a = left[..Math.Min(left.Length, LongestCompared)], b = right[..Math.Min(right.Length, LongestCompared)];
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
                (diagonal, row[j]) = (row[j], Math.Min(diagonal + (a[i - 1] == b[j - 1] ? 0 : 1), 1 + Math.Min(row[j], row[j - 1])));
        }

        return row[^1];
    }

    private static List<string> WordsOf(string name)
    {
        var spaced = new StringBuilder();
        foreach (var rune in name.Replace("'", "", StringComparison.Ordinal).Replace("’", "", StringComparison.Ordinal))
            spaced.Append(char.IsLetter(rune) ? char.ToLowerInvariant(rune) : ' ');
        return [.. spaced.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Singular)];
    }

    private static string Singular(string word) => word switch
    {
        [.., 'r' or 'l', 'i', 'e', 's'] => word[..^3] + "y",
        [.., 's' or 'x' or 'z', 'e', 's'] or [.., 's' or 'c', 'h', 'e', 's'] => word[..^2],
        [.., 's', 's'] or [.., 'u' or 'i', 's'] => word,
        { Length: > 3 } when word.EndsWith('s') => word[..^1],
        _ => word,
    };
}
