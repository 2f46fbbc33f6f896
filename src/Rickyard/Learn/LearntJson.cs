using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Learning;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>The part of the JSON that says what was learnt from what, and what to do with it.</summary>
internal static class LearntJson
{
    public static void Write(Utf8JsonWriter json, LearnAnswer answer, RunClock clock)
    {
        var run = answer.Run;
        List(json, "unknowns", run.Unknowns, one => Unknown(json, one));
        List(json, "observations", run.Observations, fit => Observation(json, fit, clock));
        List(json, "left_out", answer.LeftOut, row => LeftOut(json, row));
        List(json, "next", run.Next, gain => Gain(json, gain));
        Probe(json, run.Probe);
        OverDry(json, run.OverDry, clock);
        Health(json, run.Health);
    }

    /// <summary>A spread, or null where there is none.</summary>
    public static void Spread(Utf8JsonWriter json, string name, Spread? spread, int decimals)
    {
        if (spread is not { } known)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        foreach (var (part, value) in SpreadColumns.Parts) json.Number(part, value(known), decimals);
        json.WriteEndObject();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> all, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var one in all)
        {
            json.WriteStartObject();
            write(one);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Unknown(Utf8JsonWriter json, LearntUnknown unknown)
    {
        json.WriteString("name", unknown.Name);
        json.WriteString("unit", unknown.Unit);
        Spread(json, "before", unknown.Before, 4);
        Spread(json, "after", unknown.After, 4);
        json.Number("learnt_pct", 100 * unknown.Learnt, 1);
    }

    private static void Observation(Utf8JsonWriter json, ObservationFit fit, RunClock clock)
    {
        var from = fit.Observation.From;
        json.WriteNumber("line", from.Row);
        json.Number("day", from.Day, 4);
        json.WriteString("date", clock.Iso(from.Day));
        json.WriteString("piece", from.Piece);
        json.WriteString("kind", ObservationKind.Of(fit.Observation));
        json.WriteString("place", ObservationKind.PlaceOf(fit.Observation));
        json.WriteString("words", from.Words);
        json.Number("value", fit.Value, 4);
        json.WriteString("unit", fit.Unit);
        json.WriteStartObject("expected");
        foreach (var (name, value) in new[] { ("p5", fit.Expected.Low), ("p50", fit.Expected.Middle), ("p95", fit.Expected.High) }) json.Number(name, value, 4);
        json.WriteEndObject();
        json.Number("chance_wrong", fit.ChanceWrong, 4);
        json.WriteBoolean("suspect", fit.IsSuspect);
    }

    private static void LeftOut(Utf8JsonWriter json, LeftOutRow row)
    {
        json.WriteString("place", row.Place);
        json.WriteNumber("line", row.Line);
        json.WriteString("reason", row.Why);
        json.WriteString("what_to_do", row.WhatToDo);
    }

    private static void Gain(Utf8JsonWriter json, ReadingGain gain)
    {
        json.WriteString("reading", gain.Words);
        json.WriteString("piece", gain.Piece);
        json.WriteBoolean("gives_up_piece", gain.GivesUpPiece);
        json.Number("days_now", gain.DaysNow, 2);
        json.Number("days_after", gain.DaysAfter, 2);
        json.Number("days_gained", gain.DaysGained, 2);
    }

    private static void Probe(Utf8JsonWriter json, ProbeCount probe)
    {
        json.WriteStartObject("probe");
        json.WriteNumber("pieces", probe.Pieces);
        json.Number("spread_points", 100 * probe.SpreadBetweenPieces, 3);
        json.Number("within_points", 2, 0);
        json.Number("confidence_pct", 90, 0);
        json.WriteEndObject();
    }

    private static void OverDry(Utf8JsonWriter json, OverDry? dry, RunClock clock)
    {
        if (dry is null)
        {
            json.WriteNull("over_dry");
            return;
        }

        json.WriteStartObject("over_dry");
        json.Number("share_below_pct", 100 * dry.ShareBelow, 2);
        json.Number("humidity_needed_pct", 100 * dry.HumidityNeeded, 1);
        json.Number("back_on_day", dry.BackOn, 3);
        json.WriteString("back_on_date", dry.BackOn is { } day ? clock.Iso(day) : null);
        json.WriteEndObject();
    }

    private static void Health(Utf8JsonWriter json, LearningHealth health)
    {
        json.WriteStartObject("health");
        json.Number("effective_draws", health.EffectiveDraws, 0);
        json.Number("r_hat", health.Convergence, 4);
        json.Number("stand_in_error_points", 100 * health.StandInError, 3);
        json.Number("monte_carlo_days", health.MonteCarloDays, 3);
        json.Number("inside_pct", 100 * health.InsideShare, 1);
        RunJson.Texts(json, "sentences", health.Sentences);
        json.WriteEndObject();
    }
}
