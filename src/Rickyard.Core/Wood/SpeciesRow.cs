using System.Globalization;

using CsvHelper;

using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>One row of Data/species.csv with its groups of cells turned into sourced values; empty cells are null.</summary>
internal sealed record SpeciesRow
{
    public required string CommonName { get; init; }

    public required string LatinName { get; init; }

    public required IReadOnlyList<string> Aliases { get; init; }

    public required Anatomy Anatomy { get; init; }

    public Sourced<string>? Porosity { get; init; }

    public Sourced<double>? BasicGravity { get; init; }

    public Sourced<double>? GravityAtTwelvePercent { get; init; }

    public Sourced<MoistureContent>? GreenHeartwood { get; init; }

    public Sourced<MoistureContent>? GreenSapwood { get; init; }

    public Sourced<MoistureContent>? GreenWholeStem { get; init; }

    public required bool GreenWholeStemIsGenus { get; init; }

    public Sourced<double>? RadialShrinkage { get; init; }

    public Sourced<double>? TangentialShrinkage { get; init; }

    public Sourced<double>? VolumetricShrinkage { get; init; }

    public Sourced<double>? DryingFactor { get; init; }

    public required IReadOnlyList<string> StandsIn { get; init; }

    public required double ExtraDensitySpread { get; init; }

    public required string Notes { get; init; }

    public static SpeciesRow Read(CsvReader csv) => new()
    {
        CommonName = Text(csv, "common_name"),
        LatinName = Text(csv, "latin_name"),
        Aliases = List(csv, "aliases"),
        Anatomy = Enum.Parse<Anatomy>(Text(csv, "anatomy")),
        Porosity = Text(csv, "porosity") is { Length: > 0 } words ? new(words, MarkOf(csv, "porosity_mark"), "wood anatomy") : null,
        BasicGravity = Value(csv, "basic_specific_gravity", "basic_sg"),
        GravityAtTwelvePercent = Value(csv, "sg_12pct", "sg_12pct"),
        GreenHeartwood = Moisture(csv, "green_mc_heartwood_percent", "green_mc"),
        GreenSapwood = Moisture(csv, "green_mc_sapwood_percent", "green_mc"),
        GreenWholeStem = Moisture(csv, "green_mc_whole_stem_percent", "green_mc_whole_stem"),
        GreenWholeStemIsGenus = Text(csv, "green_mc_whole_stem_of") == "genus",
        RadialShrinkage = Percent(csv, "shrinkage_radial_percent", "shrinkage"),
        TangentialShrinkage = Percent(csv, "shrinkage_tangential_percent", "shrinkage"),
        VolumetricShrinkage = Percent(csv, "shrinkage_volumetric_percent", "shrinkage"),
        DryingFactor = Value(csv, "drying_factor", "drying_factor"),
        StandsIn = List(csv, "stands_in"),
        ExtraDensitySpread = Number(csv, "extra_density_spread") ?? 0,
        Notes = Text(csv, "notes"),
    };

    private static string Text(CsvReader csv, string column) => csv.GetString(column).Trim();

    private static string[] List(CsvReader csv, string column) =>
        Text(csv, column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static double? Number(CsvReader csv, string column) =>
        Text(csv, column) is { Length: > 0 } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

    private static Sourced<double>? Value(CsvReader csv, string column, string group) =>
        Number(csv, column) is { } number ? new(number, MarkOf(csv, group + "_mark"), Text(csv, group + "_source")) : null;

    private static Sourced<double>? Percent(CsvReader csv, string column, string group) =>
        Value(csv, column, group) is { } value ? new(value.Value / 100, value.Mark, value.Source) : null;

    private static Sourced<MoistureContent>? Moisture(CsvReader csv, string column, string group) =>
        Value(csv, column, group) is { } value ? new(MoistureContent.FromPercentDry(value.Value), value.Mark, value.Source) : null;

    private static Mark MarkOf(CsvReader csv, string column) => Text(csv, column) switch
    {
        "table" => Mark.Table,
        "table (secondary)" => Mark.SecondaryTable,
        "text" => Mark.Text,
        "from memory" => Mark.FromMemory,
        "computed" => Mark.Computed,
        var other => throw new InvalidOperationException($"species.csv: '{other}' in {column} is no mark."),
    };
}
