using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Drying;
using Rickyard.HotBox;

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
        Bands(json, SeriesColumn.Bands(run));
        Array(json, "air_emc_pct_dry", run.AirEquilibrium, 100, 3);
        Array(json, "surface_share_pct", run.SurfaceShare, 100, 1);
        Window(json, run.Window, clock);
        if (run.Charge is { } charge) BoxJson.Write(json, run, charge);
        RunInputsJson.Write(json, run.Case);
        Texts(json, "assumptions", run.Case.Assumptions);
        Texts(json, "notes", run.Notes);
        json.WriteString("model_version", run.ModelVersion);
        json.WriteNumber("seed", run.Seed);
        json.WriteNumber("members", run.Members);
        json.Number("seconds", run.Seconds, 3);
    });

    /// <summary>All curves of one split.</summary>
    public static void Series(Utf8JsonWriter json, MoistureSeries series)
    {
        foreach (var column in SeriesColumn.All) Array(json, column.Name, column.Values(series), column.Scale, column.Decimals);
    }

    /// <summary>Bands by name.</summary>
    public static void Bands(Utf8JsonWriter json, IEnumerable<(string Name, MoistureSeries Series)> bands)
    {
        json.WriteStartObject("bands");
        foreach (var (name, series) in bands)
        {
            json.WriteStartObject(name);
            Series(json, series);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    /// <summary>Numbers scaled and rounded.</summary>
    public static void Array(Utf8JsonWriter json, string name, double[] values, double scale, int decimals)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.Number(scale * value, decimals);
        json.WriteEndArray();
    }

    /// <summary>When the core is in the band.</summary>
    public static void Window(Utf8JsonWriter json, ReadyWindow window, RunClock clock, string name = "window")
    {
        json.WriteStartObject(name);
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

    /// <summary>Sentences.</summary>
    public static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
