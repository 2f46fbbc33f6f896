using System.Globalization;

namespace Rickyard.Testing;

/// <summary>One row of a <see cref="ReferenceTable"/>, its cells by column name.</summary>
/// <param name="Cells">Text of every cell.</param>
public sealed record ReferenceRow(IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>A cell as text.</summary>
    public string Text(string column) => Cells[column];

    /// <summary>A cell as a number.</summary>
    public double Number(string column) => double.Parse(Cells[column], CultureInfo.InvariantCulture);

    /// <summary>Whether a cell holds anything.</summary>
    public bool Has(string column) => Cells[column].Length > 0;

    /// <inheritdoc/>
    public override string ToString() => string.Join(", ", Cells.Select(cell => $"{cell.Key} {cell.Value}"));
}
