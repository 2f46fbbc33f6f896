using Rickyard.Commands;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Quantities;

namespace Rickyard.Meter;

/// <summary>A corrected reading as JSON.</summary>
internal static class MeterJson
{
    public static string Write(MeterQuestion question, CorrectedReading corrected) => JsonText.Object(json =>
    {
        var (reading, rows) = (question.Reading, SpeciesRows.Of(question.Species));
        json.WriteString("species", question.Species.CommonName);
        json.WriteString("scale", reading.Scale.Name);
        json.Number("reading_pct", reading.Range == ShownRange.Number || reading.Shown > 0 ? 100 * reading.Shown : null, 2);
        json.WriteString("range", reading.Range.ToString().ToLowerInvariant());
        json.Number("temperature_c", reading.WoodCelsius, 2);
        json.WriteString("verdict", corrected.Verdict switch { MeterVerdict.AtLeast => "at least", MeterVerdict.AtMost => "at most", _ => "measured" });
        json.Number("corrected_pct_dry", 100 * corrected.Moisture, 2);
        json.Number("low_pct_dry", 100 * corrected.Low, 2);
        json.Number("high_pct_dry", 100 * corrected.High, 2);
        json.Number("corrected_pct_wet", MoistureContent.FromFraction(corrected.Moisture).PercentWet, 2);
        json.Number("own_spread_points", 100 * corrected.OwnSpread, 2);
        json.Number("shared_spread_points", 100 * corrected.SharedSpread, 2);
        json.WriteString("curve", rows.Kind.ToString().ToLowerInvariant());
        Strings(json, "rows", rows.Rows.Select(row => row.Name));
        if (reading is { Range: ShownRange.Number, WoodCelsius: { } celsius }) Methods(json, 100 * reading.Shown, celsius);
        Strings(json, "notes", corrected.Notes);
    });

    private static void Methods(System.Text.Json.Utf8JsonWriter json, double percent, double celsius)
    {
        json.WriteStartArray("temperature_methods");
        foreach (var method in TemperatureMethods.All)
        {
            json.WriteStartObject();
            json.WriteString("name", method.Name);
            json.Number("add_points", method.Add(percent, celsius), 3);
            json.WriteString("mark", method.Mark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Strings(System.Text.Json.Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
