namespace Rickyard.Verification;

/// <summary>A table of text: one line of heads, rows of as many cells.</summary>
internal sealed record TextTable(string Title, string[] Heads, IReadOnlyList<string[]> Rows)
{
    private const string Gap = "  ";

    /// <summary>The same without one column.</summary>
    internal TextTable Without(string head)
    {
        var left = Array.IndexOf(Heads, head);
        string[] Rest(string[] cells) => [.. cells.Where((_, column) => column != left)];
        return new(Title, Rest(Heads), [.. Rows.Select(Rest)]);
    }

    /// <summary>Columns of equal width, for a terminal.</summary>
    internal string Plain()
    {
        int[] widths = [.. Heads.Select((head, column) => Rows.Select(row => row[column].Length).Append(head.Length).Max())];
        string Line(string[] cells) => string.Join(Gap, cells.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd();
        string[] rule = [.. widths.Select(width => new string('-', width))];
        return string.Join('\n', [Title, "", Line(Heads), Line(rule), .. Rows.Select(Line)]);
    }

    /// <summary>The same in Markdown.</summary>
    internal string Markdown()
    {
        static string Line(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)))} |";
        return string.Join('\n', [$"### {Title}", "", Line(Heads), Line(Heads.Select(_ => "---")), .. Rows.Select(Line)]);
    }
}
