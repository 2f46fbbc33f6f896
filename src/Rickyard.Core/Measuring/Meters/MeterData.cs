using CsvHelper;

namespace Rickyard.Core.Measuring.Meters;

/// <summary>Tables that come with the program, row by row.</summary>
internal static class MeterData
{
    /// <summary>Rows of a table, by column.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string table)
    {
        using var stream = typeof(MeterData).Assembly.GetManifestResourceStream($"Rickyard.Core.Measuring.Data.{table}.csv")!;
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        List<IReadOnlyDictionary<string, string>> rows = [];
        while (csv.Read()) rows.Add(csv.Headers.ToDictionary(column => column, csv.GetString));
        return rows;
    }
}
