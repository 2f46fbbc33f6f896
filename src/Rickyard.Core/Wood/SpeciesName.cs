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

    /// <summary>Number of letters to insert, drop, change or swap with the neighbour (optimal string alignment).</summary>
    public static int Distance(string left, string right)
    {
        string a = left[..Math.Min(left.Length, LongestCompared)], b = right[..Math.Min(right.Length, LongestCompared)];
        var cost = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) cost[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) cost[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
            for (var j = 1; j <= b.Length; j++)
                cost[i, j] = Step(a, b, cost, i, j);
        return cost[a.Length, b.Length];
    }

    private static int Step(string a, string b, int[,] cost, int i, int j)
    {
        var change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var best = Math.Min(change, 1 + Math.Min(cost[i - 1, j], cost[i, j - 1]));
        var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
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
