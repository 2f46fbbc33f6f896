using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Drying;
using Rickyard.Core.Learning;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>What was learnt as JSON: bands along the report times, windows, pieces, unknowns, observations, what to read next, and all that made it.</summary>
internal static class LearnJson
{
    public static string Write(LearnAnswer answer) => JsonText.Object(json =>
    {
        var run = answer.Run;
        var clock = new RunClock(run.Case, run.Days[^1]);
        json.WriteString("name", run.Case.Name);
        if (clock.Iso(0) is { } date) json.WriteString("start_date", date);
        json.Number("today_day", run.Today, 4);
        if (clock.Iso(run.Today) is { } today) json.WriteString("today_date", today);
        Curves(json, run);
        RunJson.Window(json, run.Window, clock);
        RunJson.Window(json, run.WindowBefore, clock, "window_before");
        RunJson.Window(json, run.LotWindow, clock, "lot_window");
        Band(json, answer.Band);
        RunJson.Window(json, run.LotWindowBefore, clock, "lot_window_before");
        Pieces(json, run, clock);
        Classes(json, run, clock);
        LearntJson.Write(json, answer, clock);
        RunInputsJson.Write(json, run.Case);
        RunJson.Texts(json, "assumptions", run.Case.Assumptions);
        RunJson.Texts(json, "notes", run.Notes);
        json.WriteString("model_version", run.ModelVersion);
        json.WriteNumber("seed", run.Request.Seed);
        json.WriteNumber("members", run.Request.Members);
        json.WriteNumber("draws", run.Request.Draws);
        json.Number("seconds", run.Seconds, 3);
    });

    private static void Curves(Utf8JsonWriter json, LearningRun run)
    {
        RunJson.Array(json, "days", run.Days, 1, 5);
        RunJson.Bands(json, SpreadColumns.Bands(run));
        Spreads(json, "lot_core_pct_dry", run.LotCore, 3);
        Spreads(json, "core_before_pct_dry", run.CoreBefore, 3);
        Spreads(json, "share_in_band_pct", run.ShareInBand, 2);
        RunJson.Array(json, "air_emc_pct_dry", run.AirEquilibrium, 100, 3);
    }

    private static void Spreads(Utf8JsonWriter json, string name, IReadOnlyList<Spread> spreads, int decimals)
    {
        json.WriteStartObject(name);
        foreach (var (part, value) in SpreadColumns.Parts) RunJson.Array(json, part, [.. spreads.Select(value)], 100, decimals);
        json.WriteEndObject();
    }

    private static void Band(Utf8JsonWriter json, CookBand band)
    {
        json.WriteStartObject("band");
        json.Number("low_pct_dry", 100 * band.Low, 3);
        json.Number("high_pct_dry", 100 * band.High, 3);
        json.WriteString("scale", band.Scale);
        json.Number("shown_low_pct", 100 * band.ShownLow, 3);
        json.Number("shown_high_pct", 100 * band.ShownHigh, 3);
        json.WriteEndObject();
    }

    private static void Classes(Utf8JsonWriter json, LearningRun run, RunClock clock)
    {
        json.WriteStartArray("classes");
        foreach (var one in run.Classes)
        {
            json.WriteStartObject();
            json.WriteString("name", one.Name);
            RunJson.Bands(json, SpreadColumns.Bands(one.Run));
            RunJson.Window(json, one.Run.Window, clock);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Pieces(Utf8JsonWriter json, LearningRun run, RunClock clock)
    {
        json.WriteStartArray("pieces");
        foreach (var piece in run.Pieces)
        {
            json.WriteStartObject();
            json.WriteString("piece", piece.Piece);
            RunJson.Bands(json, SpreadColumns.Bands(piece));
            RunJson.Window(json, piece.Window, clock);
            LearntJson.Spread(json, "ready_kg", piece.ReadyKilograms, 4);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
