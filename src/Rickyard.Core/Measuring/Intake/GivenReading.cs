namespace Rickyard.Core.Measuring.Intake;

/// <summary>One reading as a person wrote it down, in a line of a table or in a case file.</summary>
/// <param name="Place">Name of the table, or "readings" for those of a case.</param>
/// <param name="Line">Line of the table, or place in the list, from 1.</param>
/// <param name="Path">What a message puts before the name of a column: "oak.csv, line 4, " or "readings[3].".</param>
/// <param name="Cells">Text by column; a column that is left out is empty.</param>
internal sealed record GivenReading(string Place, int Line, string Path, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>The text of a column, trimmed; empty where there is none.</summary>
    public string this[string column] => Cells.TryGetValue(column, out var text) ? text.Trim() : "";

    /// <summary>What a message names.</summary>
    public string FieldOf(string column) => Path + column;

    /// <summary>All that was written, for a message.</summary>
    public string Words => string.Join(", ", ReadingColumns.All.Select(column => this[column]).Where(text => text.Length > 0));
}
