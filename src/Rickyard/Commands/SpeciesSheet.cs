using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using static System.FormattableString;

namespace Rickyard.Commands;

/// <summary>Every value known of a wood, published ones with mark and source, those by rule with the rule.</summary>
internal static class SpeciesSheet
{
    private const string ByRule = "by rule";

    public static IEnumerable<SpeciesLine> Of(Species species)
    {
        var published = new[]
        {
            Line("basic_density_kg_per_m3", "basic density", species.BasicDensity, density => density.KilogramsPerCubicMetre, 0, "kg/m³"),
            Line("gravity_at_12_pct", "specific gravity at 12 % dry basis", species.GravityAtTwelvePercent, value => value, 2, ""),
            Line("green_heartwood_pct_dry", "green heartwood", species.GreenHeartwood, Dry, 0, "% dry basis"),
            Line("green_sapwood_pct_dry", "green sapwood", species.GreenSapwood, Dry, 0, "% dry basis"),
            Line("green_whole_stem_pct_dry", "green whole stem", species.GreenWholeStem, Dry, 0, "% dry basis"),
            Line("radial_shrinkage_pct", "radial shrinkage, green to oven-dry", species.RadialShrinkage, Percent, 1, "%"),
            Line("tangential_shrinkage_pct", "tangential shrinkage", species.TangentialShrinkage, Percent, 1, "%"),
            Line("volumetric_shrinkage_pct", "shrinkage of volume", species.VolumetricShrinkage, Percent, 1, "%"),
            Line("drying_factor", "drying rate beside northern red oak's", species.DryingFactor, value => value, 2, ""),
        };
        return [Vessels(species), .. published.OfType<SpeciesLine>(), .. Rules(species)];
    }

    private static IEnumerable<SpeciesLine> Rules(Species species) =>
    [
        new("basic_density_spread_pct", "spread of basic density", 100 * species.BasicDensitySpread, 0, "% of it", ByRule, "standard deviation within a lot"),
        new("green_moisture_pct_dry", "green split, heart- and sapwood", 100 * species.GreenMoisture.Mean, 0, "% dry basis", ByRule, species.GreenMoisture.Rule),
        new("green_moisture_spread_points", "spread of that", 100 * species.GreenMoisture.Spread, 0, "points", ByRule, "standard deviation from split to split"),
        new("rate_factor_median", "rate factor", species.RateFactor.Median, 2, "", ByRule, species.RateFactor.Rule),
        new("rate_factor_spread_log", "spread of its logarithm", species.RateFactor.SpreadLog, 2, "", ByRule, "standard deviation"),
    ];

    private static SpeciesLine Vessels(Species species) => new(
        "anatomy", "vessels", null, 0, Words(species.Anatomy), species.Porosity is { } porosity ? Words(porosity.Mark) : ByRule, species.Porosity?.Source ?? "");

    private static SpeciesLine? Line<T>(string key, string name, Sourced<T>? value, Func<T, double> number, int decimals, string unit) =>
        value is null ? null : new(key, name, number(value.Value), decimals, unit, Words(value.Mark), value.Source);

    private static double Dry(MoistureContent moisture) => moisture.PercentDry;

    private static double Percent(double share) => 100 * share;

    private static string Words(Mark mark) => mark switch
    {
        Mark.SecondaryTable => "table (secondary)",
        Mark.FromMemory => "from memory",
        Mark.StandIn => "stand-in",
        _ => Invariant($"{mark}").ToLowerInvariant(),
    };

    private static string Words(Anatomy anatomy) => anatomy switch
    {
        Anatomy.Softwood => "softwood, no vessels",
        Anatomy.DiffusePorous => "diffuse-porous",
        Anatomy.SemiRingPorous => "semi-ring-porous",
        Anatomy.RingPorousOpen => "ring-porous, heartwood open",
        _ => "ring-porous, heartwood blocked",
    };
}
