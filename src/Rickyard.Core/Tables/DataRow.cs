using System.Globalization;
using CsvHelper;

namespace Rickyard.Core.Tables;

/// <summary>One row of a table that comes with the program, under a room's Data/, its cells by column name; lines that begin with # name sources and marks.</summary>
internal sealed class DataRow
{
    private readonly Dictionary<string, string> _cells;

    private DataRow(Dictionary<string, string> cells) => _cells = cells;

    /// <summary>All rows of a table.</summary>
    /// <param name="table">Room and name: "Verification/measured_cases".</param>
    internal static IReadOnlyList<DataRow> Read(string table)
    {
        var (room, name) = (table[..table.LastIndexOf('/')], table[(table.LastIndexOf('/') + 1)..]);
        using var stream = typeof(DataRow).Assembly.GetManifestResourceStream($"Rickyard.Core.{room.Replace('/', '.')}.Data.{name}.csv")!;
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        List<DataRow> rows = [];
        while (csv.Read()) rows.Add(new(csv.Headers.ToDictionary(column => column, csv.GetString)));
        return rows;
    }

    internal string Text(string column) => _cells[column];

    internal double Number(string column) => double.Parse(_cells[column], CultureInfo.InvariantCulture);

    internal double? NumberOrNull(string column) => _cells[column].Length > 0 ? Number(column) : null;

    internal T Choice<T>(string column)
        where T : struct, Enum => Enum.Parse<T>(_cells[column]);
}
