using System.Text;

namespace Rickyard.Core.Weather;

/// <summary>
/// One line of a delimited text, cut into trimmed fields. Quotes may enclose separators, doubled quotes stand for one. Lines are cut one by
/// one, since a blank line ends a block and every message names its line.
/// </summary>
internal static class DelimitedLine
{
    /// <summary>The fields of a line.</summary>
    public static string[] Split(string line, char separator)
    {
        if (!line.Contains('"', StringComparison.Ordinal)) return line.Split(separator, StringSplitOptions.TrimEntries);
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var letter = line[i];
            if (letter == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') field.Append(line[i++]);
            else if (letter == '"') quoted = !quoted;
            else if (letter == separator && !quoted) Take(fields, field);
            else field.Append(letter);
        }

        Take(fields, field);
        return [.. fields];
    }

    /// <summary>Which of comma, semicolon and tab cuts a header into most fields.</summary>
    public static char SeparatorOf(string header) => new[] { ';', '\t', ',' }.MaxBy(separator => Split(header, separator).Length);

    private static void Take(List<string> fields, StringBuilder field)
    {
        fields.Add(field.ToString().Trim());
        field.Clear();
    }
}
