using System.Globalization;
using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Dry;

namespace Rickyard.SplitSize;

/// <summary>Sizes as JSON: the answer with the sizes tried, the chart, and all that made them.</summary>
internal static class SizeJson
{
    private const double MetresPerInch = 0.0254;

    public static string Write(DryingCase drying, SizeAnswer? answer, SizeCalendar? calendar) => JsonText.Object(json =>
    {
        json.WriteString("name", drying.Name);
        json.Number("own_width_cm", 100 * SplitWidth.Across(drying.Split), 2);
        json.Number("smallest_tried_cm", 100 * SizeSteps.Smallest, 2);
        json.Number("largest_tried_cm", 100 * SizeSteps.Largest, 2);
        if (answer is not null) Answer(json, answer);
        if (calendar is not null) Chart(json, calendar);
        RunInputsJson.Write(json, drying);
    });

    private static void Answer(Utf8JsonWriter json, SizeAnswer answer)
    {
        var (clock, request, run) = (new RunClock(answer.Run), answer.Request, answer.Run);
        json.WriteStartObject("answer");
        json.Number("needed_day", request.NeededDays, 4);
        json.WriteString("needed_date", clock.Iso(request.NeededDays));
        Asked(json, request.BandHigh, request.Confidence);
        json.Number("width_cm", 100 * answer.Largest, 2);
        json.Number("width_in", answer.Largest / MetresPerInch, 2);
        json.WriteBoolean("none_ready", answer.Largest is null);
        json.WriteBoolean("largest_ready", answer.LargestPasses);
        Sizes(json, answer, clock);
        json.WriteStartObject("on_the_day");
        foreach (var column in SeriesColumn.All) json.Number(column.Name, column.Scale * Curve.At(run.Days, column.Values(run.Typical), request.NeededDays), column.Decimals);
        json.WriteEndObject();
        json.WriteStartArray("notes");
        foreach (var note in run.Notes) json.WriteStringValue(note);
        json.WriteEndArray();
        Made(json, run.ModelVersion, request.Seed, request.Members, answer.Seconds);
        json.WriteEndObject();
    }

    private static void Sizes(Utf8JsonWriter json, SizeAnswer answer, RunClock clock)
    {
        json.WriteStartArray("sizes");
        foreach (var trial in answer.Trials)
        {
            var day = trial.DayOf(answer.Request.Confidence);
            json.WriteStartObject();
            json.Number("width_cm", 100 * trial.Width, 2);
            json.Number("chance_ready", trial.ChanceBy(answer.Request.NeededDays), 4);
            json.Number("ready_day", day, 2);
            json.WriteString("ready_date", day is { } known ? clock.Iso(known) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Chart(Utf8JsonWriter json, SizeCalendar calendar)
    {
        json.WriteStartObject("chart");
        Asked(json, calendar.Request.BandHigh, calendar.Request.Confidence);
        json.WriteStartArray("stacked");
        foreach (var start in calendar.Starts) json.WriteStringValue(start.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture));
        json.WriteEndArray();
        json.WriteStartArray("months_until_needed");
        foreach (var months in calendar.Request.Spans) json.WriteNumberValue(months);
        json.WriteEndArray();
        json.WriteStartArray("width_cm");
        foreach (var row in calendar.Widths)
        {
            json.WriteStartArray();
            foreach (var width in row) json.Number(100 * width, 2);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        Made(json, calendar.ModelVersion, calendar.Request.Seed, calendar.Request.Members, calendar.Seconds);
        json.WriteEndObject();
    }

    private static void Asked(Utf8JsonWriter json, double bandHigh, double confidence)
    {
        json.Number("band_high_pct_dry", 100 * bandHigh, 3);
        json.Number("confidence_pct", 100 * confidence, 2);
    }

    private static void Made(Utf8JsonWriter json, string version, int seed, int members, double seconds)
    {
        json.WriteString("model_version", version);
        json.WriteNumber("seed", seed);
        json.WriteNumber("members", members);
        json.Number("seconds", seconds, 3);
    }
}
