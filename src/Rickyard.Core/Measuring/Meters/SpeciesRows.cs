using Rickyard.Core.Tables;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Measuring.Meters;

/// <summary>The resistance rows that stand for a wood, and how near they are.</summary>
/// <param name="Kind">How near.</param>
/// <param name="Rows">One or more.</param>
public sealed record SpeciesRows(RowKind Kind, IReadOnlyList<ResistanceCurve> Rows)
{
    /// <summary>Error of a curve on its own wood: 1.0 point (Fernández-Golfín and others 2012, Forest Systems 21: 121, abstract: error of prediction of ten hardwoods).</summary>
    private const double CurveError = 0.010;

    /// <summary>What a relative adds; judgement, about what the rows of one genus differ by. [kg kg⁻¹]</summary>
    private const double RelativeError = 0.010;

    private static readonly Dictionary<string, DataRow> BySpecies = DataRow.Read("Measuring/pin_rows").ToDictionary(row => row.Text("species"));

    /// <summary>Of a wood.</summary>
    public static SpeciesRows Of(Species species)
    {
        if (!BySpecies.TryGetValue(species.CommonName, out var row)) return new(RowKind.Group, OfGroup(species.Anatomy == Anatomy.Softwood ? "softwood" : "hardwood"));
        var rows = row.Text("rows").Split('|').Select(name => ResistanceTable.Find(name)!).ToArray();
        return new(row.Text("kind") == "own" ? RowKind.Own : RowKind.Related, rows);
    }

    /// <summary>Moisture at a resistance: the mean over the rows. [kg kg⁻¹]</summary>
    public double Moisture(double megohm) => Rows.Average(row => row.Moisture(megohm));

    /// <summary>Standard deviation of the wood's own curve about that, at a resistance. [kg kg⁻¹]</summary>
    public double Spread(double megohm)
    {
        var mean = Moisture(megohm);
        var between = Rows.Average(row => Math.Pow(row.Moisture(megohm) - mean, 2));
        var relative = Kind == RowKind.Own ? 0 : RelativeError * RelativeError;
        return Math.Sqrt(CurveError * CurveError + relative + between);
    }

    /// <summary>Highest moisture the rows tell apart, and no more than a meter is good for. [kg kg⁻¹]</summary>
    /// <param name="meterCeiling">What a meter is good for. [kg kg⁻¹]</param>
    public double Ceiling(double meterCeiling) => Math.Min(meterCeiling, Rows.Where(row => row.IsLevelAbove).Select(row => row.Highest).DefaultIfEmpty(meterCeiling).Average());

    private static IReadOnlyList<ResistanceCurve> OfGroup(string group) =>
        [.. ResistanceTable.All.Where(row => row.Group == group && row.Mark == "table")];
}
