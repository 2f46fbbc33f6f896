using CsCheck;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class CaseProblemTests
{
    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        const string Wrong = """
            { "wood": { "species": "nothern red oka" },
              "split": { "shape": "wedge", "length": "-4 in", "radius": "6 in", "angle": "60°", "colour": "red" },
              "start": { "moisture": "400 % dry basis", "temperature": "15 °C", "at": "2024-02-31" },
              "air": { "steady": { "temperature": "70 °C", "humidity": "140 %" } },
              "run": { "for": "4 days" } }
            """;
        var problems = CaseReader.Read(Wrong, "wrong.json").Problems;
        Assert.Equal(
            ["air.steady.humidity", "split.colour", "split.length", "start.at", "start.moisture", "wood.species"],
            problems.Select(problem => problem.Field).Order(StringComparer.Ordinal));
        Assert.Contains("northern red oak", Of(problems, "wood.species").WhatToDo, StringComparison.Ordinal);
        Assert.Contains("-4 in", Of(problems, "split.length").WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("400 % dry basis", Of(problems, "start.moisture").WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("2024-02-31", Of(problems, "start.at").WhatIsWrong, StringComparison.Ordinal);
        Assert.Contains("140 %", Of(problems, "air.steady.humidity").WhatIsWrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("wood", null, "wood", "missing")]
    [InlineData("wood.species", null, "wood.species", "missing")]
    [InlineData("wood.species", "7", "wood.species", "not a text")]
    [InlineData("wood.basic density", "\"6 kg/m3\"", "wood.basic density", "below")]
    [InlineData("wood.rate factor", "-1", "wood.rate factor", "not a number")]
    [InlineData("wood.rate factor", "\"1\"", "wood.rate factor", "not a number")]
    [InlineData("split.shape", null, "split.shape", "missing")]
    [InlineData("split.shape", "\"weddge\"", "split.shape", "weddge")]
    [InlineData("split.length", null, "split.length", "missing")]
    [InlineData("split.length", "16", "split.length", "bare number")]
    [InlineData("split.length", "\"0 in\"", "split.length", "below")]
    [InlineData("split.length", "null", "split.length", "not a length")]
    [InlineData("split.angle", null, "split.angle", "missing")]
    [InlineData("split.angle", "\"200°\"", "split.angle", "above")]
    [InlineData("split.diameter", "\"6 in\"", "split.diameter", "no \"diameter\"")]
    [InlineData("split.green mass", "\"4 kg\"", "split.radius", "given twice")]
    [InlineData("split.bark", "\"yes\"", "split.bark", "neither true nor false")]
    [InlineData("lot.pieces", "0", "lot.pieces", "not a whole number")]
    [InlineData("lot.pieces", "2.5", "lot.pieces", "not a whole number")]
    [InlineData("lot.size spread", "\"90 %\"", "lot.size spread", "above")]
    [InlineData("start.moisture", null, "start.moisture", "missing")]
    [InlineData("start.moisture", "\"68 %\"", "start.moisture", "basis")]
    [InlineData("start.moisture", "68", "start.moisture", "not a text")]
    [InlineData("start.moisture", "\"-3 % dry basis\"", "start.moisture", "below")]
    [InlineData("start.moisture", "\"114 % dry basis\"", "start.moisture", "pores")]
    [InlineData("start.moisture", "\"60 % wet basis\"", "start.moisture", "pores")]
    [InlineData("start.moisture", """{ "core": "40 % dry basis" }""", "start.moisture.shell", "missing")]
    [InlineData("start.moisture", """{ "core": "400 % dry basis", "shell": "12 % dry basis" }""", "start.moisture.core", "pores")]
    [InlineData("start.temperature", "\"200 °C\"", "start.temperature", "above")]
    [InlineData("start.at", "\"1 April 2024\"", "start.at", "not a day")]
    [InlineData("air", null, "air", "missing")]
    [InlineData("air", "{}", "air", "no air")]
    [InlineData("air", "[]", "air", "not a group")]
    [InlineData("air.steady.humidity", null, "air.steady.humidity", "missing")]
    [InlineData("air.steady.temperature", "\"105 °C\"", "", "")]
    [InlineData("air.steady.speed", "\"1048 mph\"", "air.steady.speed", "above")]
    [InlineData("air.normals", """{ "place": "Des Moines, Iowa" }""", "air", "at once")]
    [InlineData("air", """{ "stages": [] }""", "air.stages", "not a list")]
    [InlineData("air", """{ "stages": [ { "temperature": "20 °C", "humidity": "50 %" }, { "temperature": "20 °C", "humidity": "50 %" } ] }""", "air.stages[0].for", "missing")]
    [InlineData("air", """{ "normals": { "place": "Nowhereville" } }""", "air.normals.place", "Nowhereville")]
    [InlineData("air", """{ "weather": {} }""", "air.weather.file", "missing")]
    [InlineData("rack", """{ "cover": "top" }""", "rack", "outdoors")]
    [InlineData("history", """[ { "rest": { "temperature": "20 °C" } } ]""", "air", "Both")]
    [InlineData("run", null, "run", "missing")]
    [InlineData("run.for", null, "run.for", "missing")]
    [InlineData("run.for", "\"40 years\"", "run.for", "above")]
    [InlineData("run.report every", "\"40 days\"", "run.report every", "do not fit")]
    [InlineData("run.report every", "\"1 min\"", "run.report every", "reports")]
    [InlineData("name", "\"\"", "name", "empty")]
    public void One_wrong_value_is_one_problem_that_names_its_key(string path, string? json, string field, string what)
    {
        var problems = CaseReader.Read(SampleCase.With(path, json), "c.json").Problems;
        if (field.Length == 0) Assert.Empty(problems);
        else Assert.Contains(what, problems.Single(problem => problem.Field == field).WhatIsWrong, StringComparison.Ordinal);
        Assert.True(problems.Count <= 2);
    }

    [Theory]
    [InlineData("wood.specis", "\"species\"")]
    [InlineData("split.lenght", "\"length\"")]
    [InlineData("wood.basic_density", "\"basic density\"")]
    [InlineData("lot.spread", "\"size spread\"")]
    [InlineData("run.every", "\"report every\"")]
    [InlineData("histroy", "\"history\"")]
    public void Unknown_key_gets_the_near_one_suggested(string path, string near)
    {
        var problem = Of(CaseReader.Read(SampleCase.With(path, "\"1\""), "c.json").Problems, path);
        Assert.StartsWith($"Did you mean {near}?", problem.WhatToDo, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "rack": { "for": "2 days", "cover": "top" } }""", "history[0].rack", "no weather")]
    [InlineData("""{ "rack": { "for": "2 days", "weather": { "file": "a" }, "normals": { "place": "Des Moines, Iowa" } } }""", "history[0].rack", "both")]
    [InlineData("""{ "box": { "temperature": "70 °C", "humidity": "10 %" } }""", "history[0].box.for", "missing")]
    [InlineData("""{ "oven": { "for": "2 days" } }""", "history[0].oven", "not known")]
    [InlineData("""{ "split again": { "into": 9 } }""", "history[0].split again.into", "not a whole number")]
    [InlineData("""{ "split again": {} }""", "history[0].split again.into", "missing")]
    [InlineData("""{ "rest": { "for": "1 day", "temperature": "20 °C" }, "split again": { "into": 2 } }""", "history[0]", "one pair of braces")]
    public void Wrong_step_of_a_history_is_told_with_its_place(string step, string field, string what)
    {
        var history = $$"""[ {{step}}, { "room": { "temperature": "20 °C", "humidity": "50 %" } } ]""";
        var problems = CaseReader.Read(SampleCase.Change(SampleCase.With("air", null), "history", history), "c.json").Problems;
        Assert.Contains(what, problems.First(problem => problem.Field == field).WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void History_that_ends_with_splitting_is_refused() => Assert.Contains(
        "takes no time",
        Of(CaseReader.Read(SampleCase.Change(SampleCase.With("air", null), "history", """[ { "split again": { "into": 2 } } ]"""), "c.json").Problems, "history[0].split again").WhatIsWrong,
        StringComparison.Ordinal);

    [Fact]
    public void Weather_without_a_start_day_is_refused()
    {
        var text = SampleCase.Change(SampleCase.With("air", """{ "normals": { "place": "Des Moines, Iowa" } }"""), "start.at", null);
        Assert.Contains("the day on which the run starts", Of(CaseReader.Read(text, "c.json").Problems, "start.at").WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Steam_that_is_no_air_is_refused_with_its_ceiling()
    {
        var text = SampleCase.With("air", """{ "steady": { "temperature": "110 °C", "humidity": "90 %" } }""");
        Assert.Contains("below 70.6 %", Of(CaseReader.Read(text, "c.json").Problems, "air.steady.humidity").WhatToDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Key_given_twice_is_refused() => Assert.Contains(
        "given twice",
        Of(CaseReader.Read(SampleCase.Text.Replace("\"run\":", "\"name\": \"b\", \"run\":", StringComparison.Ordinal), "c.json").Problems, "name").WhatIsWrong,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("", "c.json", "empty")]
    [InlineData("  \n ", "c.json", "empty")]
    [InlineData("[]", "case", "not a group")]
    [InlineData("{\n  \"é\" \"b\" }", "c.json, line 2, column 7", "not JSON")]
    [InlineData("{ \"name\": }", "c.json, line 1, column 11", "not JSON")]
    [InlineData("nonsense", "c.json, line 1, column 2", "not JSON")]
    public void Text_that_is_no_case_is_told_where(string json, string field, string what)
    {
        var problem = Assert.Single(CaseReader.Read(json, "c.json").Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(what, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void File_cut_off_anywhere_is_refused_without_an_exception()
    {
        for (var length = 0; length < SampleCase.Text.Length; length++) Assert.NotEmpty(CaseReader.Read(SampleCase.Text[..length], "c.json").Problems);
    }

    [Fact]
    public void Text_changed_at_random_gives_a_case_or_problems_never_an_exception() =>
        Gen.Select(Gen.Int[0, SampleCase.Text.Length - 1], Gen.Int[0, 8], Gen.String[Gen.Char["{}[]\",:0123456789.-eE% °Fabn\n"], 0, 8]).Sample(change =>
        {
            var (at, cut, put) = change;
            var text = SampleCase.Text.Remove(at, Math.Min(cut, SampleCase.Text.Length - at)).Insert(at, put);
            var read = CaseReader.Read(text, "c.json");
            return read.Value is null ? read.Problems.Count > 0 && read.Problems.All(IsTold) : read.Problems.Count == 0;
        });

    private static bool IsTold(Problem problem) => problem.Field.Length > 0 && problem.WhatIsWrong.Length > 0 && problem.WhatToDo.Length > 0;

    private static Problem Of(IReadOnlyList<Problem> problems, string field) => Assert.Single(problems, problem => problem.Field == field);
}
