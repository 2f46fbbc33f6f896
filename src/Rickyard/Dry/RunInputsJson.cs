using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Cases;

namespace Rickyard.Dry;

/// <summary>What went into a run: the case as it was written, and as it was understood.</summary>
internal static class RunInputsJson
{
    private static readonly JsonDocumentOptions AsCase = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    public static void Write(Utf8JsonWriter json, DryingCase drying)
    {
        json.WriteStartObject("inputs");
        Case(json, drying.SourceText);
        json.WriteStartObject("understood");
        json.WriteString("species", drying.Species.CommonName);
        json.Number("basic_density_kg_m3", drying.BasicDensity, 2);
        json.Number("rate_factor", drying.RateFactor, 4);
        json.WriteString("split", drying.Split.Describe());
        json.Number("green_volume_m3", drying.Split.Volume, 6);
        json.Number("pieces", drying.Pieces, 0);
        json.Number("size_spread_pct", 100 * drying.SizeSpread, 2);
        Start(json, drying.Start);
        json.Number("days", drying.Days, 5);
        json.Number("report_every_days", drying.ReportEvery, 6);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Start(Utf8JsonWriter json, CaseStart start)
    {
        json.Number("start_core_pct_dry", 100 * start.Core, 3);
        json.Number("start_shell_pct_dry", 100 * (start.Shell ?? start.Core), 3);
        json.Number("start_end_pct_dry", 100 * (start.End ?? start.Core), 3);
        json.Number("start_temp_c", start.Celsius, 2);
    }

    private static void Case(Utf8JsonWriter json, string text)
    {
        if (text.Length == 0) return;
        using var document = JsonDocument.Parse(text.TrimStart('\uFEFF'), AsCase);
        json.WritePropertyName("case");
        document.RootElement.WriteTo(json);
    }
}
