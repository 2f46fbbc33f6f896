using Rickyard.Core.Drying;
using Rickyard.Dry;
using Rickyard.Screens;
using Rickyard.Testing.Approval;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Tests.Dry;

public sealed class RunStoryTests
{
    private const string Box = """{ "stages": [ { "for": "9 days", "temperature": "70 °C", "humidity": "10 %", "speed": "1 m/s" } ] }""";

    [Fact]
    public void Hot_run_by_days_is_the_approved_story()
    {
        var text = SampleCase.Change(SampleCase.Change(SampleCase.With("air", Box), "start.at", null), "run", """{ "for": "9 days", "report every": "6 h" }""");
        Approved.Check("Rickyard.Tests", "story-hot", Told(InventedRun.Of(SampleCase.Read(text), air: 0.015, tau: 3)));
    }

    [Fact]
    public void Run_that_is_never_ready_says_so_first_and_why()
    {
        var story = Told(InventedRun.Of(SampleCase.Read(SampleCase.Text), air: 0.24, tau: 40));
        Assert.StartsWith("The core is not in 18–20 % dry basis within these 37 days: on 8 May 2024 it is still at 41.4 % dry basis", Joined(story), StringComparison.Ordinal);
        Assert.Contains("waiting alone never brings it there", Joined(story), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_that_is_late_for_some_says_after_the_end()
    {
        var story = Told(InventedRun.Of(SampleCase.Read(SampleCase.Text), air: 0.10, tau: 20));
        Assert.Contains("to after the end of the run", Joined(story), StringComparison.Ordinal);
        Assert.Contains("The chance that it gets there within the run is 60 %.", Joined(story), StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_that_starts_too_dry_says_so_and_when_it_is_back()
    {
        var dry = SampleCase.Read(SampleCase.With("start.moisture", "\"8 % dry basis\""));
        Assert.StartsWith("The core starts at 8.0 % dry basis, drier than 18–20 % dry basis, and on 8 May 2024 is at", Joined(Told(InventedRun.Of(dry, air: 0.15, tau: 30))), StringComparison.Ordinal);
        Assert.Contains("it is back in the band from", Joined(Told(InventedRun.Of(dry, air: 0.25, tau: 10))), StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_that_starts_in_the_band_is_ready_from_the_start() =>
        Assert.StartsWith("The core is in 18–20 % dry basis from the start until", Told(InventedRun.Of(SampleCase.Read(SampleCase.With("start.moisture", "\"19 % dry basis\"")), air: 0.05, tau: 20)), StringComparison.Ordinal);

    [Fact]
    public void Mild_air_needs_no_cautions_and_hot_air_or_a_box_does()
    {
        Assert.Empty(Cautions.For(SampleCase.Read(SampleCase.Text)));
        Assert.Contains(Cautions.For(SampleCase.Read(SampleCase.With("air", Box))), said => said.StartsWith("Carbon monoxide", StringComparison.Ordinal));
        var cool = SampleCase.Change(SampleCase.With("air", null), "history", """[ { "box": { "temperature": "30 °C", "humidity": "30 %" } } ]""");
        Assert.NotEmpty(Cautions.For(SampleCase.Read(cool)));
    }

    [Theory]
    [InlineData(0.9, "all along the air at its surface (90 % of the resistance)", "more and drier air")]
    [InlineData(0.1, "all along the way out through the wood (90 % of the resistance)", "thinner pieces and warmth")]
    [InlineData(0.5, "about alike", "both thinner pieces and better air")]
    public void What_holds_it_back_decides_what_would_speed_it(double share, string limit, string cure)
    {
        var run = InventedRun.Of(SampleCase.Read(SampleCase.Text), air: 0.08, tau: 12);
        var limited = run with { SurfaceShare = [.. run.Days.Select(_ => share)] };
        Assert.Contains(limit, LimitSentences.Limits(limited), StringComparison.Ordinal);
        Assert.Contains(cure, LimitSentences.Faster(limited), StringComparison.Ordinal);
    }

    [Fact]
    public void Narrow_screen_keeps_every_line_within_its_width_but_for_the_table()
    {
        using StringWriter output = new(), error = new();
        new Screen(output, error, 60).Bullets(Cautions.For(SampleCase.Read(SampleCase.With("air", Box))));
        Assert.All(output.ToString().Split('\n'), line => Assert.True(line.Length <= 60));
    }

    [Fact]
    public void Story_never_shows_a_bare_percent_for_moisture() =>
        Assert.DoesNotMatch(@"\d % (?!dry basis|of the resistance|less|more|relative)", Joined(Told(InventedRun.Of(SampleCase.Read(SampleCase.Text), air: 0.08, tau: 12)).Split("Assumed:")[0]));

    private static string Joined(string story) => story.Replace('\n', ' ');

    private static string Told(DryingRun run)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new();
        RunStory.Tell(run, new Screen(output, error, 100));
        return output.ToString();
    }
}
