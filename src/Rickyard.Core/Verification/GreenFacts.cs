using Rickyard.Core.Tables;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Verification;

/// <summary>Published green moisture, mass lost on drying and density beside the species table.</summary>
internal static class GreenFacts
{
    internal static IEnumerable<BesideFact> All() => DataRow.Read("Verification/facts_green").Select(Of);

    private static BesideFact Of(DataRow row)
    {
        var species = SpeciesCatalogue.Find(row.Text("species")).Value!;
        var green = species.GreenMoisture.Mean;
        var (model, unit) = row.Text("kind") switch
        {
            "loss" => (100 * (green - 0.20) / (1 + green), "% of green mass"),
            "moisture" => (100 * green, "% dry basis"),
            _ => (species.BasicDensity.Value.KilogramsPerCubicMetre / (1 - (species.VolumetricShrinkage?.Value ?? 0)), "kg/m³"),
        };
        return new("Green wood", row.Text("statement"), row.NumberOrNull("low"), row.NumberOrNull("high"), model, unit, row.Text("source"));
    }
}
