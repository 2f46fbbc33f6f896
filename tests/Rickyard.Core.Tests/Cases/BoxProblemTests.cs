using CsCheck;
using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class BoxProblemTests
{
    [Theory]
    [InlineData("inside", null, "inside", "missing")]
    [InlineData("inside.width", "\"0 cm\"", "inside.width", "below")]
    [InlineData("inside.height", null, "inside.height", "missing")]
    [InlineData("inside.depth", "\"3 L\"", "inside.depth", "\"L\"")]
    [InlineData("walls", null, "walls", "missing")]
    [InlineData("walls", "\"cardboard\"", "walls", "cardboard")]
    [InlineData("walls.conductance", "\"0 W/m2K\"", "walls.conductance", "below")]
    [InlineData("walls.conductance", "\"0 m2K/W\"", "walls.conductance", "above")]
    [InlineData("heater.power", "\"-1500 W\"", "heater.power", "below")]
    [InlineData("heater.power", "1500", "heater.power", "bare number")]
    [InlineData("heater.power", null, "heater.power", "missing")]
    [InlineData("heater.fuel", "\"charcoal\"", "heater.fuel", "charcoal")]
    [InlineData("heater.efficiency", "\"120 %\"", "heater.efficiency", "above")]
    [InlineData("heater.radiant share", "\"90 %\"", "heater.radiant share", "above")]
    [InlineData("heater", null, "stages[0].temperature", "no heater")]
    [InlineData("fan.speed", "\"-1 m/s\"", "fan.speed", "below")]
    [InlineData("vent", "\"ajar\"", "vent", "ajar")]
    [InlineData("vent", "{}", "vent", "neither")]
    [InlineData("vent", """{ "flow": "9 m3/h", "opening": "9 cm2" }""", "vent", "both")]
    [InlineData("vent", """{ "flow": "400 m3/h" }""", "vent.flow", "more than the 360 m³/h")]
    [InlineData("vent.humidity", "\"0 %\"", "vent.humidity", "below")]
    [InlineData("leaks", "{}", "leaks.opening", "missing")]
    [InlineData("leaks.opening", "\"-1 cm2\"", "leaks.opening", "below")]
    [InlineData("ambient", "{}", "ambient", "no air")]
    [InlineData("ambient.normals", """{ "place": "Des Moines, Iowa" }""", "ambient", "at once")]
    [InlineData("ambient.steady.temperature", "\"80 °C\"", "ambient.steady.temperature", "above")]
    [InlineData("ambient", """{ "normals": { "place": "Nowhereville" } }""", "ambient.normals.place", "Nowhereville")]
    [InlineData("dehumidifier", """{ "capacity": "0 L/day", "efficiency": "2 L/kWh", "humidity": "50 %" }""", "dehumidifier.capacity", "below")]
    [InlineData("sun", """{ "glazing": "1 m2", "gain": "60 %", "conductance": "3 W/m2K", "over level": 1 }""", "sun", "no sun")]
    [InlineData("stages", "[]", "stages", "not a list")]
    [InlineData("stages.0.for", null, "stages[0].for", "missing")]
    [InlineData("stages.1.for", null, "stages[1].for", "missing")]
    [InlineData("stages.0.kind", "\"drayng\"", "stages[0].kind", "drayng")]
    [InlineData("stages.1.vent", "\"shut\"", "stages[1].vent", "shut tight")]
    [InlineData("stages.0.vent", """{ "flow": "0.2 m3/s" }""", "stages[0].vent.flow", "more than")]
    [InlineData("stages.0", """{ "for": "5 days", "kind": "drying", "vent": "shut", "humidity": "30 %" }""", "stages[0].humidity", "Both")]
    [InlineData("stages.0", """{ "for": "5 days", "kind": "open rest", "temperature": "20 °C" }""", "stages[0].temperature", "out of the box")]
    [InlineData("stages.0.temperature", "\"200 °F\"", "stages[0].temperature", "93 °C")]
    [InlineData("stages.0.temperature", "\"78 °C\"", "stages[0].temperature", "77 °C")]
    [InlineData("temperature", "\"60 °C\"", "temperature", "Both")]
    [InlineData("stages", null, "temperature", "missing")]
    [InlineData("tariff.electricity", "\"0.15/kWh\"", "tariff.electricity", "not a price")]
    [InlineData("tariff.electricity", "\"$0.15\"", "tariff.electricity", "not a price")]
    [InlineData("tariff.electricity", "\"$0/kWh\"", "tariff.electricity", "not a price")]
    [InlineData("tariff.gas", "\"0.10 €/kWh\"", "tariff", "\"€\"")]
    [InlineData("override", "\"yes\"", "override", "too little")]
    [InlineData("ventt", "\"shut\"", "ventt", "not known")]
    public void One_wrong_value_of_a_box_names_its_key(string path, string? json, string field, string what)
    {
        var text = path.StartsWith("stages.0", StringComparison.Ordinal) || path.StartsWith("stages.1", StringComparison.Ordinal) ? InStage(path, json) : SampleBoxCase.WithBox(path, json);
        var problems = CaseReader.Read(text, "c.json").Problems;
        Assert.Contains(what, Of(problems, $"air.box.{field}").WhatIsWrong, StringComparison.Ordinal);
        Assert.True(problems.Count <= 2, string.Join('\n', problems));
    }

    [Fact]
    public void Vent_that_is_shut_cannot_be_steered_by_a_stage()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("vent", "\"shut\""), "air.box.stages.0.humidity", "\"40 %\"");
        Assert.Contains("shut", Of(CaseReader.Read(text, "c.json").Problems, "air.box.stages[0].humidity").WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Glazing_larger_than_the_box_is_refused_with_what_fits()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("ambient", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "air.box.sun", """{ "glazing": "5 m2" }""");
        Assert.Contains("at most 3.85 m2", Of(CaseReader.Read(text, "c.json").Problems, "air.box.sun.glazing").WhatToDo, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("charge.0.pieces", "0", "charge[0].pieces", "not a whole number")]
    [InlineData("charge.0.pieces", null, "charge[0].pieces", "missing")]
    [InlineData("charge.0.shelf", "\"top\"", "charge[0].shelf", "top")]
    [InlineData("charge.1.packing", "\"thight\"", "charge[1].packing", "thight")]
    [InlineData("charge.1.name", "\"Small\"", "charge[1].name", "Two classes")]
    [InlineData("charge.0.split.radius", null, "charge[0].split.radius", "missing")]
    [InlineData("charge.1.colour", "\"red\"", "charge[1].colour", "not known")]
    [InlineData("charge", "[]", "charge", "not a list")]
    [InlineData("charge.1.start", """{ "moisture": "20 % dry basis", "temperature": "10 °C", "at": "2026-04-01" }""", "charge", "different days")]
    [InlineData("charge.1.split", """{ "shape": "block", "length": "14 in", "width": "8 cm", "height": "8 cm" }""", "split", "used by none")]
    [InlineData("split.length", "\"1.6 m\"", "charge", "longest edge of the box is 140 cm")]
    [InlineData("charge.0.pieces", "400", "charge", "of the 0.546 m³ inside")]
    [InlineData("lot", """{ "pieces": 10, "size spread": "10 %" }""", "lot", "own number of pieces")]
    [InlineData("air", """{ "steady": { "temperature": "25 °C", "humidity": "30 %", "speed": "0.2 m/s" } }""", "charge", "not one")]
    [InlineData("rack", """{ "cover": "top" }""", "rack", "outdoors")]
    [InlineData("wood.species", "\"nothern red oka\"", "wood.species", "nothern")]
    [InlineData("start.moisture", "\"400 % dry basis\"", "start.moisture", "pores")]
    [InlineData("start", null, "charge[0].start", "missing")]
    public void One_wrong_value_of_a_charge_names_its_key(string path, string? json, string field, string what)
    {
        var problems = CaseReader.Read(SampleCase.Change(SampleBoxCase.Text, path, json), "c.json").Problems;
        Assert.Contains(what, Of(problems, field).WhatIsWrong, StringComparison.Ordinal);
        Assert.True(problems.Count <= 2, string.Join('\n', problems));
    }

    [Theory]
    [InlineData("loose", 40)]
    [InlineData("usual", 50)]
    [InlineData("tight", 60)]
    public void Most_wood_that_fits_depends_on_the_packing(string packing, double percent)
    {
        // Wedges of 60°, 4 in radius and 14 in length: π/6 · 0.1016² · 0.3556 m³ each.
        var most = (int)(percent / 100 * 0.546 / (Math.PI / 6 * 0.1016 * 0.1016 * 0.3556));
        Assert.Empty(CaseReader.Read(Packed(most), "c.json").Problems);
        Assert.Contains($"at most {percent} %", Of(CaseReader.Read(Packed(most + 1), "c.json").Problems, "charge").WhatIsWrong, StringComparison.Ordinal);

        string Packed(int pieces) => SampleCase.Change(SampleBoxCase.Text, "charge", FormattableString.Invariant($$"""[ { "pieces": {{pieces}}, "packing": "{{packing}}" } ]"""));
    }

    [Fact]
    public void Weather_outside_needs_the_day_on_which_the_charge_is_loaded()
    {
        var text = SampleCase.Change(SampleBoxCase.WithBox("ambient", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "start.at", null);
        Assert.Contains("day on which the run starts", Of(CaseReader.Read(text, "c.json").Problems, "start.at").WhatToDo, StringComparison.Ordinal);
        Assert.Single(CaseReader.Read(SampleCase.Change(text, "charge", null), "c.json").Problems, problem => problem.Field == "start.at");
    }

    [Fact]
    public void Everything_wrong_with_box_and_charge_is_told_at_once()
    {
        var changes = new (string Path, string? Json)[]
        {
            ("charge.0.pieces", "-4"), ("charge.1.shelf", "\"warmm\""), ("air.box.inside.width", "\"0 m\""), ("air.box.walls", "\"paper\""), ("air.box.heater.power", "\"-1 W\""),
            ("air.box.stages.0.temperature", "\"99 °C\""), ("air.box.vent.humidty", "\"40 %\""), ("air.box.tariff.electricity", "\"cheap\""), ("wood.species", "\"triffid\""),
        };
        var problems = CaseReader.Read(changes.Aggregate(SampleBoxCase.Text, (text, change) => SampleCase.Change(text, change.Path, change.Json)), "c.json").Problems;
        Assert.Equal(
            [
                "air.box.heater.power", "air.box.inside.width", "air.box.stages[0].temperature", "air.box.tariff.electricity", "air.box.vent.humidty", "air.box.walls", "charge[0].pieces",
                "charge[1].shelf", "wood.species",
            ],
            problems.Select(problem => problem.Field).Order(StringComparer.Ordinal));
        Assert.StartsWith("Did you mean \"warm\"?", Of(problems, "charge[1].shelf").WhatToDo, StringComparison.Ordinal);
        Assert.StartsWith("Did you mean \"humidity\"?", Of(problems, "air.box.vent.humidty").WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void File_cut_off_anywhere_is_refused_without_an_exception()
    {
        for (var length = 0; length < SampleBoxCase.Text.Length; length++) Assert.NotEmpty(CaseReader.Read(SampleBoxCase.Text[..length], "c.json").Problems);
    }

    [Fact]
    public void Text_changed_at_random_gives_a_case_or_problems_never_an_exception() =>
        Gen.Select(Gen.Int[0, SampleBoxCase.Text.Length - 1], Gen.Int[0, 8], Gen.String[Gen.Char["{}[]\",:0123456789.-eE% °FabWkm/"], 0, 8]).Sample(change =>
        {
            var (at, cut, put) = change;
            var text = SampleBoxCase.Text.Remove(at, Math.Min(cut, SampleBoxCase.Text.Length - at)).Insert(at, put);
            var read = CaseReader.Read(text, "c.json");
            return read.Value is null ? read.Problems.Count > 0 : IsSound(((BoxPeriod)read.Value.Periods[0]).Plan.Box);
        });

    [Fact]
    public void Whole_group_put_anywhere_as_a_text_or_number_is_told_without_an_exception()
    {
        foreach (var key in new[] { "inside", "walls", "heater", "fan", "vent", "leaks", "ambient", "dehumidifier", "sun", "stages", "temperature", "tariff", "override" })
            foreach (var json in new[] { "7", "\"\"", "[]", "null", "[ 7 ]", "{ \"x\": 1 }" })
                Assert.NotEmpty(CaseReader.Read(SampleBoxCase.WithBox(key, json), "c.json").Problems);
    }

    // A stage that is replaced as a whole goes in as a list of its own beside the other.
    private static string InStage(string path, string? json) => path == "stages.0"
        ? SampleBoxCase.WithBox("stages", $$"""[ {{json}}, { "kind": "closed rest", "for": "3 days", "temperature": "70 °C" } ]""")
        : SampleBoxCase.WithBox(path, json);

    private static bool IsSound(BoxDescription box) =>
        box is { Volume: > 0, WallArea: > 0, WallConductance: > 0, WallHeatCapacity: > 0, Heater.Power: >= 0, Fan.Flow: > 0, LeakOpening: >= 0 } && box.Vent.Flow <= box.Fan.Flow && double.IsFinite(box.Fan.Speed);

    private static Problem Of(IReadOnlyList<Problem> problems, string field) => Assert.Single(problems, problem => problem.Field == field);
}
