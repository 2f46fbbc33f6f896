using CsvHelper;

namespace Rickyard.Testing;

/// <summary>A published table under Reference/, read from the folder of the test program. Lines that begin with # name source and mark.</summary>
public static class ReferenceTable
{
    /// <summary>All rows.</summary>
    /// <param name="path">Below Reference/, with forward slashes, such as <c>Air/latent_heat.csv</c>.</param>
    public static IReadOnlyList<ReferenceRow> Read(string path)
    {
        using var csv = CsvReader.FromFile(Path.Combine(AppContext.BaseDirectory, "Reference", path), new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        csv.Read();
        var columns = csv.Headers.ToArray();
        var rows = new List<ReferenceRow>();
        do rows.Add(new ReferenceRow(columns.ToDictionary(column => column, csv.GetString)));
        while (csv.Read());
        return rows;
    }
}
