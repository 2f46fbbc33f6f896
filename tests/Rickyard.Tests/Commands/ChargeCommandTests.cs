using System.Text.Json;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Quantities;
using Rickyard.Testing;
using Rickyard.Testing.Approval;
using Xunit;

namespace Rickyard.Tests.Commands;

public sealed class ChargeCommandTests : IDisposable
{
    private static readonly string Cabinet = RepositoryFolder.Of("examples", "cabinet.json");
    private static readonly string Dated = RepositoryFolder.Of("examples", "plywood-box.json");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Story_is_the_approved_one() => Approved.Check("Rickyard.Tests", "charge-story", Typed.Run("charge", Cabinet, "--goal", "even").Whole);

    [Fact]
    public void Story_of_what_cannot_be_done_is_the_approved_one() =>
        Approved.Check("Rickyard.Tests", "charge-impossible", Typed.Run(new InventedScheduleEngine(meets: false), "charge", Cabinet).Whole);

    [Fact]
    public void Options_reach_the_engine()
    {
        var engine = new InventedScheduleEngine();
        Typed.Run(engine, "charge", Cabinet, "--goal", "even", "--in", "1 week", "--band", "15-18 %", "--highest", "150 °F", "--members", "128", "--seed", "7");
        var asked = engine.Asked!;
        Assert.Equal((ChargeGoal.Even, 0.15, 0.18, 7.0, 128, 7), (asked.Goal, asked.BandLow, asked.BandHigh, asked.LatestDays, asked.Members, asked.Seed));
        Assert.Equal(65.56, asked.HighestCelsius, 0.01);
    }

    [Fact]
    public void Left_out_it_is_usable_within_the_run_of_the_case_at_seventy_degrees()
    {
        var engine = new InventedScheduleEngine();
        Typed.Run(engine, "charge", Cabinet);
        Assert.Equal(new ScheduleRequest(ChargeGoal.UsableNow, 0.18, 0.20, 10, 70, 64, 1), engine.Asked);
    }

    [Fact]
    public void Day_counts_from_the_start_of_the_case()
    {
        var engine = new InventedScheduleEngine();
        Typed.Run(engine, "charge", Dated, "--by", "2026-03-15");
        Assert.Equal(14, engine.Asked!.LatestDays);
    }

    [Theory]
    [InlineData("--by", "2026-03-15", "does not say on which day it starts")]
    [InlineData("--by", "Saturday", "is not a day")]
    [InlineData("--in", "10", "has no unit")]
    [InlineData("--in", "3 h", "is below what is possible")]
    [InlineData("--goal", "dry", "is no goal")]
    [InlineData("--highest", "80 °C", "above 77 °C")]
    [InlineData("--band", "20", "is not a band")]
    [InlineData("--members", "6", "cannot be run")]
    [InlineData("--picture", "a.gif", "neither SVG nor PNG")]
    public void Wrong_option_says_why(string option, string value, string why)
    {
        var spoken = Typed.Run("charge", Cabinet, option, value);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains(why, spoken.Error.Replace("\n      ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Day_before_the_loading_is_refused() => Assert.Contains("is not after the loading on 2026-03-01", Typed.Run("charge", Dated, "--by", "2026-02-20").Error, StringComparison.Ordinal);

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var spoken = Typed.Run("charge", _folder.Of("none.json"), "--goal", "x", "--by", "2026-03-15", "--in", "1 day", "--seed", "-1");
        Assert.Equal(2, spoken.Code);
        Assert.Contains("4 problems", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Search_that_is_stopped_answers_with_its_best_and_says_so()
    {
        var spoken = Typed.Run(new InventedScheduleEngine(isStopped: true), "charge", Cabinet);
        Assert.Equal((0, "Stopped before the end of the search: this is the best so far.\n"), (spoken.Code, spoken.Error));
        Assert.Contains("Stopped before the end of the search; the best of 65 schedules so far:", spoken.Output, StringComparison.Ordinal);
        Assert.Contains("Pull list", spoken.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Search_that_is_stopped_before_anything_was_tried_says_so()
    {
        var spoken = Typed.Run(new FailingScheduleEngine(() => throw new OperationCanceledException()), "charge", Cabinet);
        Assert.Equal((1, "Stopped. No file was changed.\n"), (spoken.Code, spoken.Error));
    }

    [Fact]
    public void Problems_of_the_search_are_told_in_the_same_layout()
    {
        var spoken = Typed.Run(new FailingScheduleEngine(() => ResultOf.Failure<ScheduleAnswer>("air", "The case has no hot box.", "Give one.")), "charge", Cabinet);
        Assert.Equal(2, spoken.Code);
        Assert.Contains("  air\n      The case has no hot box.\n      Give one.\n", spoken.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_is_written_beside_the_story()
    {
        Assert.Equal(0, Typed.Run("charge", Cabinet, "--picture", _folder.Of("plan.svg")).Code);
        Assert.Equal("svg", File.ReadAllText(_folder.Of("plan.svg")));
    }

    [Fact]
    public void Json_holds_the_pull_list_and_the_choices_with_units_in_their_names()
    {
        var spoken = Typed.Run(new InventedScheduleEngine(meets: false), "charge", Cabinet, "--json");
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
        var plan = JsonDocument.Parse(spoken.Output).RootElement;
        Assert.Equal(("usable", false, false), (plan.GetProperty("goal").GetString(), plan.GetProperty("meets_goal").GetBoolean(), plan.GetProperty("stopped").GetBoolean()));
        var pulls = plan.GetProperty("pull_list").EnumerateArray().ToList();
        Assert.Equal(["small", "medium", "large"], pulls.Select(pull => pull.GetProperty("name").GetString()));
        Assert.Equal(JsonValueKind.Null, pulls[2].GetProperty("pull_day").ValueKind);
        Assert.All(pulls, pull => Assert.True(pull.GetProperty("mass_at_pull_kg").GetDouble() < pull.GetProperty("mass_at_loading_kg").GetDouble()));
        Assert.Single(plan.GetProperty("trade_off").EnumerateArray(), one => one.GetProperty("chosen").GetBoolean());
        Assert.Equal(["more_days", "finer_splits", "fewer_pieces", "drier_start"], plan.GetProperty("cures").EnumerateArray().Select(cure => cure.GetProperty("kind").GetString()));
        Assert.Equal(plan.GetProperty("run").GetProperty("days").GetArrayLength(), plan.GetProperty("run").GetProperty("air_rh_pct").GetArrayLength());
        Assert.Equal("Oak in the old cabinet (invented)", plan.GetProperty("inputs").GetProperty("case").GetProperty("name").GetString());
    }
}
