using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rickyard.Core.Learning;
using Rickyard.Core.Quantities;
using Rickyard.Learn;
using Rickyard.Testing.Approval;
using Rickyard.Testing.Cases;
using Rickyard.Testing.Learning;
using Xunit;

namespace Rickyard.Tests.Learn;

public sealed class LearnCommandTests : IDisposable
{
    private static readonly LeftOutRow Faulty = new("readings.csv", 14, "The day, 1 March 2026, is before the lot existed.", "Check the year.");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Help_is_the_approved_one() => Approved.Check("Rickyard.Tests", "help-learn", TypedLearn.Run("--help").Whole);

    [Fact]
    public void Story_is_the_approved_one() => Approved.Check("Rickyard.Tests", "learn-story", TypedLearn.Run(Sample(), "readings.csv").Whole);

    [Fact]
    public void Json_is_the_approved_one() =>
        Approved.Check("Rickyard.Tests", "learn-json", Indented(TypedLearn.Run(Source(Faulty), Sample(), "readings.csv", "--json").Output));

    [Theory]
    [InlineData("one-reading")]
    [InlineData("unready")]
    [InlineData("over-dry")]
    [InlineData("ready-piece")]
    public void Story_of_a_variant_is_the_approved_one(string name) =>
        Approved.Check("Rickyard.Tests", $"learn-{name}", TypedLearn.Run(new InventedLearningEngine(LearningSamples.All[name]), Sample(), "readings.csv").Whole);

    [Fact]
    public void Options_reach_the_engine()
    {
        var engine = new InventedLearningEngine();
        TypedLearn.Run(engine, Sample(), "readings.csv", "--members", "64", "--seed", "7", "--band", "15-18 %", "--today", "2024-04-21");
        Assert.Equal(new LearningRequest(64, Seed: 7, BandLow: 0.15, BandHigh: 0.18, Today: 20), engine.Asked);
        Assert.Equal(10, engine.Learnt.Count);
    }

    [Fact]
    public void Band_on_a_meters_scale_is_translated_and_both_are_told()
    {
        var engine = new InventedLearningEngine();
        var spoken = TypedLearn.Run(engine, Sample(), "readings.csv", "--scale", "Douglas-fir");
        Assert.Equal((0.16, 0.18), (Math.Round(engine.Asked!.BandLow, 9), Math.Round(engine.Asked.BandHigh, 9)));
        Assert.Contains("18–20 as a meter on the Douglas-fir scale shows it, is 16.0–18.0 % dry basis", spoken.Output.Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_is_not_needed_where_the_case_has_readings()
    {
        var source = new InventedSource();
        Assert.Equal(0, TypedLearn.Run(source, Sample()).Code);
        Assert.Null(source.Asked);
    }

    [Fact]
    public void Faulty_row_is_told_on_both_sides_and_does_not_stop_the_answer()
    {
        var spoken = TypedLearn.Run(Source(Faulty), Sample(), "readings.csv");
        Assert.Equal((0, "Left out: readings.csv, line 14: The day, 1 March 2026, is before the lot existed.\n"), (spoken.Code, spoken.Error));
        Assert.Contains("readings.csv, line 14: The day, 1 March 2026, is before the lot existed. Check the year.", spoken.Output.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_of_faulty_rows_alone_is_refused_with_every_row()
    {
        var source = new InventedSource { Found = ResultOf.Success(new FoundObservations([], [Faulty, Faulty with { Line = 15 }], [])) };
        var spoken = TypedLearn.Run(source, Sample(), "readings.csv");
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("2 problems", spoken.Error, StringComparison.Ordinal);
        Assert.Contains("readings.csv, line 15", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_reading_at_all_is_refused_with_what_a_table_holds()
    {
        var spoken = TypedLearn.Run(new InventedSource { Found = ResultOf.Success(new FoundObservations([], [], [])) }, Sample());
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("There is no reading to learn from.", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_that_cannot_be_read_is_refused()
    {
        var spoken = TypedLearn.Run(new InventedSource { Found = ResultOf.Failure<FoundObservations>("none.csv", "There is no such file.", "Check the name.") }, Sample(), "none.csv");
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("  none.csv\n      There is no such file.\n      Check the name.\n", spoken.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--today", "yesterday", "is not a day")]
    [InlineData("--today", "2024-03-01", "is not within the run of the case, 2024-04-01 to 2024-05-08")]
    [InlineData("--today", "2025-04-01", "is not within the run of the case")]
    [InlineData("--scale", "balsa wish", "is no scale that is known")]
    [InlineData("--band", "20", "is not a band")]
    [InlineData("--members", "6", "cannot be run")]
    [InlineData("--seed", "-1", "is negative")]
    [InlineData("--picture", "a.gif", "neither SVG nor PNG")]
    [InlineData("--csv", "no/where/a.csv", "folder does not exist")]
    public void Wrong_option_says_why(string option, string value, string why)
    {
        var spoken = TypedLearn.Run(Sample(), "readings.csv", option, value);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains(why, spoken.Error.Replace("\n      ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Today_needs_a_case_with_a_date()
    {
        var spoken = TypedLearn.Run(_folder.Write("case.json", SampleCase.With("start.at", null)), "readings.csv", "--today", "2024-04-21");
        Assert.Equal(2, spoken.Code);
        Assert.Contains("does not say on which day it starts", spoken.Error.Replace("\n      ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var path = _folder.Write("case.json", SampleCase.With("wood.species", "\"nothern red oka\""));
        var spoken = TypedLearn.Run(path, "readings.csv", "--members", "5", "--band", "x", "--today", "soon", "--picture", _folder.Of("a.gif"));
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("5 problems", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_is_stopped_says_how_far_it_came()
    {
        var spoken = TypedLearn.Run(new InventedLearningEngine { Meanwhile = () => throw new OperationCanceledException() }, Sample(), "readings.csv", "--csv", _folder.Of("a.csv"));
        Assert.Equal((1, ""), (spoken.Code, spoken.Output));
        Assert.Contains("Stopped with 43 % of the work done", spoken.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], _folder.Names);
    }

    [Fact]
    public void Failure_inside_is_answered_by_the_one_handler()
    {
        var spoken = TypedLearn.Run(new InventedLearningEngine { Meanwhile = () => throw new InvalidOperationException("disk on fire") }, Sample(), "readings.csv");
        Assert.Equal((1, ""), (spoken.Code, spoken.Output));
        Assert.Contains("rickyard failed: disk on fire", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Table_and_picture_are_written_beside_the_story()
    {
        var spoken = TypedLearn.Run(Sample(), "readings.csv", "--csv", _folder.Of("a.csv"), "--picture", _folder.Of("a.svg"));
        Assert.Equal(0, spoken.Code);
        Assert.Equal("svg", File.ReadAllText(_folder.Of("a.svg")));
        var lines = File.ReadAllLines(_folder.Of("a.csv"));
        Assert.All(lines, line => Assert.Equal(lines[0].Count(letter => letter == ','), line.Count(letter => letter == ',')));
        Approved.Check("Rickyard.Tests", "learn-csv", string.Join('\n', lines.Where((_, line) => line == 0 || line % 35 == 1)));
    }

    [Fact]
    public void Output_that_becomes_unwritable_is_told_after_the_answer()
    {
        var target = _folder.Of("a.csv");
        var spoken = TypedLearn.Run(new InventedLearningEngine { Meanwhile = () => Directory.CreateDirectory(target) }, Sample(), "readings.csv", "--csv", target);
        Assert.Equal(1, spoken.Code);
        Assert.Contains("A split of this lot", spoken.Output, StringComparison.Ordinal);
        Assert.Contains("is a folder", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_arrays_of_one_length_in_all_bands()
    {
        var learnt = JsonDocument.Parse(TypedLearn.Run(Sample(), "readings.csv", "--json").Output).RootElement;
        var days = learnt.GetProperty("days").GetArrayLength();
        var bands = learnt.GetProperty("bands").EnumerateObject().Concat(learnt.GetProperty("pieces")[0].GetProperty("bands").EnumerateObject()).ToList();
        Assert.Equal(6, bands.Count);
        Assert.All(bands.SelectMany(band => band.Value.EnumerateObject()), series => Assert.Equal(days, series.Value.GetArrayLength()));
        foreach (var name in new[] { "lot_core_pct_dry", "core_before_pct_dry", "share_in_band_pct" })
            Assert.All(learnt.GetProperty(name).EnumerateObject(), part => Assert.Equal(days, part.Value.GetArrayLength()));
    }

    private static InventedSource Source(params LeftOutRow[] rows) =>
        new() { Found = ResultOf.Success(new FoundObservations([.. SampleObservations.Ten.Select(fit => fit.Observation)], rows, [])) };

    private string Sample() => _folder.Write("case.json", SampleCase.Text);

    // Curves of 141 reports are cut to their first three, so that a person can look at the whole.
    private static string Indented(string json)
    {
        var root = JsonNode.Parse(json)!;
        Cut(root);
        return root.ToJsonString(new JsonSerializerOptions { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    private static void Cut(JsonNode? node)
    {
        if (node is JsonObject members)
            foreach (var (_, member) in members) Cut(member);
        if (node is not JsonArray list) return;
        while (list is [JsonValue, _, _, _, ..]) list.RemoveAt(3);
        foreach (var member in list) Cut(member);
    }
}
