using NodaTime.Text;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Tables;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>One piece that stands for a measured case, or for one of its pieces, ready to be run.</summary>
/// <param name="row">A row of Data/assumed_pieces.csv.</param>
internal sealed class AssumedPiece(DataRow row)
{
    internal static IReadOnlyList<AssumedPiece> All { get; } = [.. DataRow.Read("Verification/assumed_pieces").Select(found => new AssumedPiece(found))];

    internal string Id => row.Text("id");

    internal string Number => row.Text("piece");

    internal AssumedAir Air => AssumedAir.Named(row.Text("air"));

    /// <summary>The case it makes.</summary>
    internal DryingCase Case()
    {
        var species = SpeciesCatalogue.Find(row.Text("species")).Value!;
        var start = LocalDatePattern.Iso.Parse(row.Text("start")).Value;
        var printed = row.NumberOrNull("moisture_pct_dry") / 100;
        var moisture = printed ?? species.GreenMoisture.Mean;
        return new()
        {
            Name = $"{Id} piece {Number}",
            Species = species,
            BasicDensity = species.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Size(species.BasicDensity.Value.KilogramsPerCubicMetre * (1 + moisture)),
            SizeSpread = (row.NumberOrNull("size_spread_pct") ?? 0) / 100,
            Start = new(moisture, null, null, printed is null, row.Number("start_celsius"), start),
            Periods = Air.Periods(start, row.Number("days")),
            Days = row.Number("days"),
            ReportEvery = row.Number("report_days"),
        };
    }

    private Split Size(double greenDensity)
    {
        var (length, bark) = (Millimetres("length_mm"), row.Text("bark") == "yes");
        if (row.NumberOrNull("radius_mm") is not null) return Split.Wedge(Millimetres("radius_mm"), Angle.FromDegrees(60), length, bark);
        var mass = Mass.FromKilograms(row.Number("mass_kg"));
        if (row.NumberOrNull("width_mm") is null)
            return Split.FromMass(row.Choice<SplitShape>("shape"), length, mass, Density.FromKilogramsPerCubicMetre(greenDensity), bark);
        var printed = Split.Block(Millimetres("width_mm"), Millimetres("height_mm"), length);
        return printed.ScaledAcross(Math.Sqrt(mass.Kilograms / greenDensity / printed.Volume));
    }

    private Length Millimetres(string column) => Length.FromMetres(row.Number(column) / 1000);
}
