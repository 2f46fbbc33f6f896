using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>A run as JSON: arrays of equal length along the report times, bands of the same, the window, and all that made it.</summary>
internal static class RunJson
{
    public static string Write(DryingRun run) => JsonText.Object(json =>
    {
        var clock = new RunClock(run);
        json.WriteString("name", run.Case.Name);
        if (clock.Iso(0) is { } date) json.WriteString("start_date", date);
        Array(json, "days", run.Days, 1, 5);
        Series(json, run.Typical);
        json.WriteStartObject("bands");
        foreach (var (name, series) in SeriesColumn.Bands(run))
        {
            json.WriteStartObject(name);
            Series(json, series);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        Array(json, "air_emc_pct_dry", run.AirEquilibrium, 100, 3);
        Array(json, "surface_share_pct", run.SurfaceShare, 100, 1);
        Window(json, run.Window, clock);
        RunInputsJson.Write(json, run.Case);
        Texts(json, "assumptions", run.Case.Assumptions);
        Texts(json, "notes", run.Notes);
        json.WriteString("model_version", run.ModelVersion);
        json.WriteNumber("seed", run.Seed);
        json.WriteNumber("members", run.Members);
        json.Number("seconds", run.Seconds, 3);
    });

    private static void Series(Utf8JsonWriter json, MoistureSeries series)
    {
        foreach (var column in SeriesColumn.All) Array(json, column.Name, column.Values(series), column.Scale, column.Decimals);
    }

    private static void Array(Utf8JsonWriter json, string name, double[] values, double scale, int decimals)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.Number(scale * value, decimals);
        json.WriteEndArray();
    }

    private static void Window(Utf8JsonWriter json, ReadyWindow window, RunClock clock)
    {
        json.WriteStartObject("window");
        json.Number("band_low_pct_dry", 100 * window.BandLow, 3);
        json.Number("band_high_pct_dry", 100 * window.BandHigh, 3);
        Spread(json, "from", window.From, clock);
        Spread(json, "until", window.Until, clock);
        json.Number("chance_ready", window.ChanceReady, 4);
        json.WriteEndObject();
    }

    private static void Spread(Utf8JsonWriter json, string name, DaySpread spread, RunClock clock)
    {
        json.WriteStartObject(name);
        foreach (var (part, day) in new[] { ("p10", spread.Early), ("p50", spread.Middle), ("p90", spread.Late) })
        {
            json.Number($"{part}_day", day, 3);
            if (clock.IsDated) json.WriteString($"{part}_date", day is { } known ? clock.Iso(known) : null);
        }

        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
