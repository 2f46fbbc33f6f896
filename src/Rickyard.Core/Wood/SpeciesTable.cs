using CsvHelper;

using MathNet.Numerics.Statistics;

namespace Rickyard.Core.Wood;

/// <summary>Turns the rows of Data/species.csv into species: first woods with values of their own, then those that borrow.</summary>
internal static class SpeciesTable
{
    private const string Resource = "Rickyard.Core.Wood.Data.species.csv";

    public static IReadOnlyList<Species> Load()
    {
        var rows = ReadRows();
        var own = rows.Where(row => row.StandsIn.Count == 0).ToList();
        var softwoodFilling = MeanFilling(own.Where(row => row.Anatomy == Anatomy.Softwood));
        var hardwoodFilling = MeanFilling(own.Where(row => row.Anatomy != Anatomy.Softwood));
        var byName = own.ToDictionary(
            row => row.CommonName,
            row => OwnValues.Resolve(row, row.Anatomy == Anatomy.Softwood ? softwoodFilling : hardwoodFilling));
        return [.. rows.Select(row => byName.TryGetValue(row.CommonName, out var species)
            ? species
            : BorrowedValues.Resolve(row, [.. row.StandsIn.Select(name => byName[name])]))];
    }

    private static List<SpeciesRow> ReadRows()
    {
        using var stream = typeof(SpeciesTable).Assembly.GetManifestResourceStream(Resource)!;
        using var csv = CsvReader.Create(stream, new CsvReaderOptions { Separator = ',', CommentPrefix = '#' });
        var rows = new List<SpeciesRow>();
        while (csv.Read()) rows.Add(SpeciesRow.Read(csv));
        return rows;
    }

    // Green moisture over the most the wood can hold, averaged over the woods with published values.
    private static double MeanFilling(IEnumerable<SpeciesRow> rows) => rows
        .Select(row => (Green: GreenMoistureRule.Published(row), Most: WoodDensity.MaximumMoisture(1000 * row.BasicGravity!.Value)))
        .Where(pair => pair.Green is not null)
        .Select(pair => pair.Green!.Mean / pair.Most)
        .Mean();
}
