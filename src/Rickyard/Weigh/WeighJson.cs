using System.Text.Json;
using Rickyard.Commands;

namespace Rickyard.Weigh;

/// <summary>The answer for machines; one shape for every question.</summary>
internal static class WeighJson
{
    public static string Write(WeighAnswer answer) => JsonText.Object(json =>
    {
        json.Number("moisture_pct_dry", 100 * answer.Moisture, 3);
        json.Number("moisture_pct_wet", 100 * answer.Moisture / (1 + answer.Moisture), 3);
        json.Number("low_pct_dry", 100 * answer.Low, 3);
        json.Number("high_pct_dry", 100 * answer.High, 3);
        json.Number("oven_dry_kg", answer.OvenDry?.Kilograms, 6);
        json.Number("target_mass_kg", answer.TargetMass?.Kilograms, 6);
        json.Number("target_mass_low_kg", answer.TargetRange?.Lightest.Kilograms, 6);
        json.Number("target_mass_high_kg", answer.TargetRange?.Heaviest.Kilograms, 6);
        json.WritePropertyName("is_constant");
        if (answer.IsConstant is { } constant) json.WriteBooleanValue(constant);
        else json.WriteNullValue();
        json.Number("pieces_read", answer.PiecesRead, 0);
        json.Number("spread_pct_dry", 100 * answer.Spread, 3);
        json.Number("wettest_pct_dry", 100 * answer.Wettest, 3);
        json.Number("pieces_needed", answer.PiecesNeeded, 0);
        json.WriteString("answer", answer.Sentence);
        json.WriteString("next", answer.Next);
        Strings(json, "notes", answer.Notes);
        Strings(json, "cautions", answer.Cautions);
    });

    private static void Strings(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
