using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Drying;
using Rickyard.Dry;

namespace Rickyard.HotBox;

/// <summary>What a hot box adds to the JSON of a run: its air along the report times, limits, classes, energy and money.</summary>
internal static class BoxJson
{
    public static void Write(Utf8JsonWriter json, DryingRun run, ChargeRun charge)
    {
        json.WriteString("override", BoxCautions.Override(charge.Plan));
        foreach (var column in BoxColumn.All) RunJson.Array(json, column.Name, column.Values(charge.Series), column.Scale, column.Decimals);
        Limits(json, charge);
        Classes(json, charge, new(run));
        Energy(json, charge);
        json.Number("drip_kg", charge.DripKilograms, 3);
        Changes(json, charge);
        RunJson.Texts(json, "cautions", BoxCautions.For(charge.Plan));
    }

    /// <summary>What limits each stage.</summary>
    public static void Limits(Utf8JsonWriter json, ChargeRun charge)
    {
        json.WriteStartArray("limits");
        foreach (var limit in charge.Limits)
        {
            json.WriteStartObject();
            json.WriteNumber("stage", limit.Stage + 1);
            json.WriteString("kind", StageWords.Of(charge.Plan.Stages[limit.Stage].Kind));
            json.Number("from_day", limit.FromDay, 3);
            json.Number("to_day", limit.ToDay, 3);
            json.WriteString("limit", StageWords.Of(limit.Limit));
            json.Number("shortfall_k", limit.Shortfall, 2);
            json.Number("vapour_share_pct", 100 * limit.VaporShare, 1);
            json.Number("surface_share_pct", 100 * limit.SurfaceShare, 1);
            json.Number("inside_share_pct", 100 * limit.InsideShare, 1);
            json.WriteString("change", BoxLimitSentences.Change(charge, limit));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Energy by use, for each kilogram of water, and its cost.</summary>
    public static void Energy(Utf8JsonWriter json, ChargeRun charge)
    {
        json.WriteStartObject("energy_use_kwh");
        Uses(json, ("water", charge.Use.Water), ("wood", charge.Use.Wood), ("walls", charge.Use.Walls), ("vent", charge.Use.Vent));
        json.WriteStartObject("in");
        Uses(json, ("heater", charge.Use.Heater), ("fan", charge.Use.Fan), ("dehumidifier", charge.Use.Dehumidifier), ("sun", charge.Use.Sun));
        json.WriteEndObject();
        json.WriteEndObject();
        json.Number("kwh_per_kg_water", EnergySentences.PerKilogram(charge), 3);
        json.Number("cost", EnergyCost.Of(charge), 2);
        json.WriteString("currency", charge.Plan.Price?.Currency);
    }

    private static void Uses(Utf8JsonWriter json, params (string Name, double Joules)[] uses)
    {
        foreach (var (name, joules) in uses) json.Number(name, EnergySentences.Kilowatthours(joules), 3);
    }

    private static void Classes(Utf8JsonWriter json, ChargeRun charge, RunClock clock)
    {
        json.WriteStartArray("classes");
        foreach (var one in charge.Classes)
        {
            json.WriteStartObject();
            json.WriteString("name", one.Class.Name);
            json.WriteString("species", one.Class.Wood.Species.CommonName);
            json.WriteString("split", one.Class.Wood.Split.Describe());
            json.WriteNumber("pieces", one.Class.Pieces);
            json.WriteString("shelf", StageWords.Of(one.Class.Shelf));
            json.Number("pull_day", one.Class.PullDay, 3);
            RunJson.Series(json, one.Typical);
            RunJson.Bands(json, SeriesColumn.Bands(one));
            RunJson.Window(json, one.Window, clock);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Changes(Utf8JsonWriter json, ChargeRun charge)
    {
        json.WriteStartArray("changes");
        foreach (var gain in charge.Changes)
        {
            json.WriteStartObject();
            json.WriteString("change", ChangeSentences.Words(gain.Change));
            json.Number("time_share", gain.TimeShare, 3);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
