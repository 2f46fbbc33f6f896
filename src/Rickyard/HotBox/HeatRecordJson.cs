using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes.HeatTreatment;

namespace Rickyard.HotBox;

/// <summary>A heat treatment record as JSON.</summary>
internal static class HeatRecordJson
{
    public static string Write(HeatRecord record) => JsonText.Object(json =>
    {
        json.WriteBoolean("predicted", record.Log.IsPredicted);
        json.WriteBoolean("certified", false);
        json.Number("margin_k", record.Margin, 3);
        Texts(json, "sensors", record.Log.Sensors);
        json.WriteNumber("readings", record.Log.Seconds.Length);
        json.WriteStartArray("schedules");
        foreach (var finding in record.Findings) Finding(json, record, finding);
        json.WriteEndArray();
        if (!record.Log.IsPredicted) Fitness(json, record.Fitness);
        Texts(json, "notes", record.Log.Notes);
        Texts(json, "cautions", HeatRecordStory.Cautions);
    });

    private static void Finding(Utf8JsonWriter json, HeatRecord record, ScheduleFinding finding)
    {
        json.WriteStartObject();
        json.WriteString("schedule", finding.Schedule.Name);
        json.Number("core_c", finding.Schedule.Celsius, 3);
        json.Number("minutes", finding.Schedule.Minutes, 3);
        json.WriteString("source", finding.Schedule.Source);
        json.WriteBoolean("held", finding.IsHeld);
        json.Number("full_at_min", finding.FullAt / 60, 3);
        Hold(json, "first_hold", record, finding.Proof);
        Hold(json, "longest_hold", record, finding.Longest);
        json.WriteString("slowest_sensor", finding.Slowest);
        json.Number("coldest_core_at_most_c", finding.Warmest, 3);
        json.WriteEndObject();
    }

    private static void Hold(Utf8JsonWriter json, string name, HeatRecord record, HeatHold? hold)
    {
        if (hold is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Number("minutes", hold.Minutes, 3);
        json.WriteString("from", record.Log.Stamps[hold.First]);
        json.WriteString("to", record.Log.Stamps[hold.Last]);
        json.Number("from_min", hold.Start / 60, 3);
        json.Number("to_min", hold.End / 60, 3);
        json.WriteEndObject();
    }

    private static void Fitness(Utf8JsonWriter json, LogFitness fitness)
    {
        json.WriteStartObject("log");
        json.WriteBoolean("as_practice_asks", fitness.IsFit);
        json.WriteNumber("wood_sensors", fitness.WoodSensors);
        json.WriteNumber("air_sensors", fitness.AirSensors);
        json.Number("longest_gap_min", fitness.LongestGap / 60, 3);
        json.Number("accuracy_k", fitness.Accuracy, 3);
        Texts(json, "lacks", HeatRecordStory.Shortcomings(fitness));
        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
