using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using Rickyard.HotBox;

namespace Rickyard.Schedules;

/// <summary>A schedule as JSON: the one chosen, its pull list, what it trades off, cures, the run of it, and all that made it.</summary>
internal static class ScheduleJson
{
    public static string Write(ScheduleAnswer answer) => JsonText.Object(json =>
    {
        var charge = answer.Run.Charge!;
        var clock = new RunClock(answer.Run);
        json.WriteString("name", answer.Case.Name);
        if (clock.Iso(0) is { } date) json.WriteString("start_date", date);
        json.WriteString("override", BoxCautions.Override(charge.Plan));
        Asked(json, answer.Request);
        json.WriteBoolean("meets_goal", answer.MeetsGoal);
        json.WriteBoolean("stopped", answer.WasStopped);
        json.WriteStartObject("best");
        CandidateJson.Write(json, answer, answer.Best);
        json.WriteEndObject();
        PullJson.Write(json, answer, clock);
        Choices(json, answer);
        Cures(json, answer.Cures);
        RunJson.Texts(json, "usable_or_even", GoalDifference.Of(answer));
        json.WriteStartObject("run");
        RunJson.Array(json, "days", answer.Run.Days, 1, 5);
        BoxJson.Write(json, answer.Run, charge);
        json.WriteEndObject();
        RunInputsJson.Write(json, answer.Case);
        RunJson.Texts(json, "assumptions", answer.Case.Assumptions);
        RunJson.Texts(json, "notes", [.. answer.Notes, .. answer.Run.Notes]);
        json.WriteString("model_version", answer.Run.ModelVersion);
        json.WriteNumber("tried", answer.Tried.Count);
        json.WriteNumber("seed", answer.Run.Seed);
        json.WriteNumber("members", answer.Run.Members);
        json.Number("seconds", answer.Seconds, 3);
    });

    private static void Asked(Utf8JsonWriter json, ScheduleRequest request)
    {
        json.WriteString("goal", request.Goal == ChargeGoal.Even ? "even" : "usable");
        json.Number("band_low_pct_dry", 100 * request.BandLow, 3);
        json.Number("band_high_pct_dry", 100 * request.BandHigh, 3);
        json.Number("latest_days", request.LatestDays, 4);
        json.Number("highest_c", request.HighestCelsius, 2);
    }

    private static void Choices(Utf8JsonWriter json, ScheduleAnswer answer)
    {
        json.WriteStartArray("trade_off");
        foreach (var candidate in answer.TradeOff)
        {
            json.WriteStartObject();
            CandidateJson.Write(json, answer, candidate);
            json.WriteBoolean("chosen", candidate == answer.Best);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Cures(Utf8JsonWriter json, IReadOnlyList<ScheduleCure> cures)
    {
        json.WriteStartArray("cures");
        foreach (var cure in cures)
        {
            var (unit, scale) = CureSentences.Unit(cure.Kind);
            json.WriteStartObject();
            json.WriteString("kind", CureSentences.Key(cure.Kind));
            json.Number("from", scale * cure.From, 2);
            json.Number("to", scale * cure.To, 2);
            json.WriteString("unit", unit);
            json.WriteString("sentence", CureSentences.Of(cure));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
