using Rickyard.Commands;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Wood;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Meter;

/// <summary>A cook's band, as their meter shows it, as moisture of one wood or of every wood.</summary>
internal static class BandTable
{
    /// <summary>In words and a table.</summary>
    public static void Tell(double low, double high, MeterScale scale, double celsius, IReadOnlyList<Species> woods, Screen screen)
    {
        screen.Paragraph(Invariant($"{100 * low:0.#} to {100 * high:0.#} on the {scale.Name} scale, wood at {celsius:0.#} °C, as moisture of the wood itself, % dry basis; a curve is good to about a point, one that stands in to two."));
        screen.Table("lrrl", ["wood", "from", "to", "curve"], woods.Select(wood => Row(low, high, scale, celsius, wood)));
    }

    /// <summary>As JSON.</summary>
    public static string Json(double low, double high, MeterScale scale, double celsius, IReadOnlyList<Species> woods) => JsonText.Object(json =>
    {
        json.WriteString("scale", scale.Name);
        json.Number("band_low_shown_pct", 100 * low, 2);
        json.Number("band_high_shown_pct", 100 * high, 2);
        json.Number("temperature_c", celsius, 2);
        json.WriteStartArray("woods");
        foreach (var wood in woods)
        {
            json.WriteStartObject();
            json.WriteString("species", wood.CommonName);
            json.Number("low_pct_dry", 100 * In(low, scale, celsius, wood), 2);
            json.Number("high_pct_dry", 100 * In(high, scale, celsius, wood), 2);
            json.WriteString("curve", SpeciesRows.Of(wood).Kind.ToString().ToLowerInvariant());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static IReadOnlyList<string> Row(double low, double high, MeterScale scale, double celsius, Species wood) =>
        [wood.CommonName, Invariant($"{100 * In(low, scale, celsius, wood):0.0}"), Invariant($"{100 * In(high, scale, celsius, wood):0.0}"), Curve(wood)];

    private static double In(double shown, MeterScale scale, double celsius, Species wood) =>
        PinCorrection.Of(new(shown, ShownRange.Number, scale, celsius), wood).Moisture;

    private static string Curve(Species wood) => SpeciesRows.Of(wood) switch
    {
        { Kind: RowKind.Group, Rows.Count: var count } => Invariant($"mean of {count} woods"),
        { Kind: RowKind.Related } rows => $"stands in: {string.Join(", ", rows.Rows.Select(row => row.Name))}",
        var rows => string.Join(", ", rows.Rows.Select(row => row.Name)),
    };
}
