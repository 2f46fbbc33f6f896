using Rickyard.Core.Drying;
using Rickyard.Web.Pictures;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class RunWordsTests
{
    private static readonly DaySpread Never = new(null, null, null);

    [Fact]
    public void Window_within_the_run_is_told_with_its_spread_and_end() =>
        Assert.Equal(
            "Ready from about 9 Jul 2025 (8 in 10 chances: 31 May to 17 Sep 2025), until about 7 Oct 2025.",
            Answer(new(231, 270, 340), new(300, 360, 399)));

    [Fact]
    public void Window_open_at_the_end_of_the_run_says_so() =>
        Assert.Equal(
            "Ready from about 9 Jul 2025 (8 in 10 chances: 31 May 2025 to past the end of this run), and still in your band when the run ends, 16 Nov 2025.",
            Answer(new(231, 270, null), Never));

    [Fact]
    public void Window_of_hours_is_told_in_hours() => Assert.Equal("Ready from about 9 Jul 2025, for only 20 hours.", Answer(new(270, 270.2, 270.4), new(270.5, 271.03, 271.5)));

    [Fact]
    public void Window_never_reached_is_told_with_its_chance() =>
        Assert.Equal("Not ready by 16 Nov 2025, when the run ends (chances that it is by then: 12 in 100).", Answer(Never, Never, 0.12));

    [Fact]
    public void Wood_drier_than_the_band_is_not_called_ready()
    {
        var dry = Run(new(0, 0, 0), Never) with { Typical = Samples.Wedge.Typical with { Core = [.. Samples.Wedge.Days.Select(_ => 0.12)] } };
        Assert.Equal("The core is drier than your band from the start.", RunWords.Answer(dry));
    }

    [Fact]
    public void Detail_names_the_moistures_their_basis_and_the_band() =>
        Assert.Matches(@"^On 9 Jul 2025 the middle of the lot has core 2\d\.\d, shell 1\d\.\d, end 1\d\.\d % dry basis; your band for the core is 18–20\.$", Plain(RunWords.Detail(Run(new(231, 270, 340), Never))));

    [Theory]
    [InlineData(0.2004, "core too wet")]
    [InlineData(0.19, "core in band")]
    [InlineData(0.1799, "core too dry")]
    public void Core_is_judged_by_the_band(double core, string verdict) => Assert.Equal(verdict, RunWords.Verdict(Samples.Wedge, core));

    [Theory]
    [InlineData(0.7249, "72")]
    [InlineData(0.2998, "30")]
    [InlineData(0.2, "20.0")]
    [InlineData(0.0204, "2.0")]
    public void Percent_has_the_digits_that_mean_something(double moisture, string text) => Assert.Equal(text, RunWords.Percent(moisture));

    private static string Answer(DaySpread from, DaySpread until, double chance = 0.9) => Plain(RunWords.Answer(Run(from, until, chance)));

    private static DryingRun Run(DaySpread from, DaySpread until, double chance = 0.9) => Samples.Wedge with { Window = new(0.18, 0.20, from, until, chance) };

    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}
