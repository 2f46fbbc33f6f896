using System.Text.Json;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Testing.Approval;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Tests.Commands;

public sealed class DryCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Story_is_the_approved_one() => Approved.Check("Rickyard.Tests", "dry-story", Typed.Run("dry", Sample()).Whole);

    [Fact]
    public void Json_is_the_approved_one() => Approved.Check("Rickyard.Tests", "dry-json", Typed.Run("dry", Sample("run", """{ "for": "3 days" }"""), "--json").Whole);

    [Fact]
    public void Json_has_arrays_of_one_length_in_all_bands()
    {
        var run = JsonDocument.Parse(Typed.Run("dry", Sample(), "--json").Output).RootElement;
        var bands = run.GetProperty("bands");
        foreach (var series in new[] { run, bands.GetProperty("p10"), bands.GetProperty("p50"), bands.GetProperty("p90") })
            foreach (var name in new[] { "mean_pct_dry", "core_pct_dry", "shell_pct_dry", "end_pct_dry", "core_temp_c", "mass_kg", "loss_pct" })
                Assert.Equal(38, series.GetProperty(name).GetArrayLength());
        Assert.Equal(38, run.GetProperty("days").GetArrayLength());
    }

    [Fact]
    public void Options_reach_the_engine()
    {
        var engine = new InventedEngine();
        Typed.Run(engine, "dry", Sample(), "--members", "128", "--seed", "7", "--band", "15–18 % dry basis");
        Assert.Equal(new DryingRequest(128, 7, 0.15, 0.18), engine.Asked);
        Assert.Equal(_folder.Path, engine.Folder);
    }

    [Theory]
    [InlineData("18-20 %", 0.18, 0.20)]
    [InlineData("15 to 17.5 % dry", 0.15, 0.175)]
    [InlineData("16 %-18 %", 0.16, 0.18)]
    [InlineData("20-25 % wet basis", 0.25, 1 / 3.0)]
    public void Band_is_read_as_people_write_it(string band, double low, double high)
    {
        var engine = new InventedEngine();
        Typed.Run(engine, "dry", Sample(), "--band", band);
        Assert.Equal(low, engine.Asked!.BandLow, 1e-12);
        Assert.Equal(high, engine.Asked.BandHigh, 1e-12);
    }

    [Fact]
    public void Table_and_picture_are_written_beside_the_story()
    {
        var spoken = Typed.Run("dry", Sample(), "--csv", _folder.Of("a.csv"), "--picture", _folder.Of("a.png"));
        Assert.Equal(0, spoken.Code);
        Assert.Equal("png", File.ReadAllText(_folder.Of("a.png")));
        var lines = File.ReadAllLines(_folder.Of("a.csv"));
        Assert.Equal(39, lines.Length);
        Assert.StartsWith("day,date,mean_pct_dry,core_pct_dry", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("0,2024-04-01,68,68,68,68,20,4.2,0,", lines[1], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.Equal(lines[0].Count(letter => letter == ','), line.Count(letter => letter == ',')));
        Assert.Equal(["a.csv", "a.png", "case.json"], _folder.Names);
    }

    [Fact]
    public void Everything_wrong_in_case_and_options_is_told_at_once()
    {
        var path = _folder.Write("case.json", SampleCase.Change(SampleCase.With("split.length", "\"-4 in\""), "wood.species", "\"nothern red oka\""));
        var spoken = Typed.Run("dry", path, "--members", "5", "--seed", "-1", "--band", "20", "--csv", _folder.Of("no/where.csv"), "--picture", _folder.Of("a.gif"));
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        foreach (var what in new[] { "-4 in", "northern red oak", "--members", "--seed", "--band", "--csv", "--picture", "7 problems" })
            Assert.Contains(what, spoken.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], _folder.Names);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{ \"name\": \"cut o")]
    [InlineData("not a case")]
    public void Case_that_is_no_json_is_refused_with_its_name(string text)
    {
        var spoken = Typed.Run("dry", _folder.Write("bad.json", text), "--csv", _folder.Of("a.csv"));
        Assert.Equal(2, spoken.Code);
        Assert.Contains("bad.json", spoken.Error, StringComparison.Ordinal);
        Assert.Equal(["bad.json"], _folder.Names);
    }

    [Fact]
    public void Case_in_another_encoding_is_refused_with_its_line()
    {
        File.WriteAllBytes(_folder.Of("latin.json"), [.. "{\n\"name\": \""u8, 0xE9, .. "\" }"u8]);
        Assert.Contains("line 2 holds other bytes", Typed.Run("dry", _folder.Of("latin.json")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_that_is_not_there_is_told() => Assert.Contains("no such file", Typed.Run("dry", _folder.Of("none.json")).Error, StringComparison.Ordinal);

    [Fact]
    public void Problems_of_the_engine_are_told_in_the_same_layout()
    {
        var spoken = Typed.Run(new FailingEngine(() => ResultOf.Failure<DryingRun>("x.epw, line 9", "It has 30 columns.", "Give 35.")), "dry", Sample());
        Assert.Equal(2, spoken.Code);
        Assert.Contains("  x.epw, line 9\n      It has 30 columns.\n      Give 35.\n", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Failure_inside_is_answered_by_the_one_handler()
    {
        var spoken = Typed.Run(new FailingEngine(() => throw new InvalidOperationException("disk on fire")), "dry", Sample(), "--csv", _folder.Of("a.csv"));
        Assert.Equal((1, ""), (spoken.Code, spoken.Output));
        Assert.Contains("rickyard failed: disk on fire", spoken.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], _folder.Names);
    }

    [Fact]
    public void Work_that_is_stopped_says_so()
    {
        var spoken = Typed.Run(new FailingEngine(() => throw new OperationCanceledException()), "dry", Sample());
        Assert.Equal((1, "Stopped. No file was changed.\n"), (spoken.Code, spoken.Error));
    }

    [Fact]
    public void Output_that_becomes_unwritable_is_told_after_the_answer()
    {
        var target = _folder.Of("a.csv");
        var spoken = Typed.Run(new BlockingEngine(target), "dry", Sample(), "--csv", target);
        Assert.Equal(1, spoken.Code);
        Assert.Contains("The core is", spoken.Output, StringComparison.Ordinal);
        Assert.Contains("is a folder", spoken.Error, StringComparison.Ordinal);
    }

    private string Sample() => _folder.Write("case.json", SampleCase.Text);

    private string Sample(string path, string json) => _folder.Write("case.json", SampleCase.With(path, json));
}
