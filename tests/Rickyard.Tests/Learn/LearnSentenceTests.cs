using Rickyard.Core.Learning;
using Rickyard.Learn;
using Rickyard.Testing.Learning;
using Xunit;

namespace Rickyard.Tests.Learn;

public sealed class LearnSentenceTests
{
    [Theory]
    [InlineData(0.81, "a fifth slower")]
    [InlineData(0.97, "as much")]
    [InlineData(1.33, "a third faster")]
    [InlineData(2, "twice as much")]
    [InlineData(3.1, "3.1 times as much")]
    public void Factor_is_said_as_people_say_it(double factor, string words) => Assert.Equal(words, new FactorWords("slower", "faster").Of(factor));

    [Theory]
    [InlineData(0.68, 0.9, "between a tenth and a third slower")]
    [InlineData(1.1, 1.5, "between a tenth and half faster")]
    [InlineData(0.9, 1.2, "from a tenth slower to a fifth faster")]
    [InlineData(0.99, 1.02, "within a thirtieth")]
    [InlineData(0.79, 0.81, "near a fifth slower")]
    public void Range_of_factors_is_said_once_where_it_lies_on_one_side(double low, double high, string words) => Assert.Equal(words, new FactorWords("slower", "faster").Between(low, high));

    [Fact]
    public void Unknown_that_neither_moved_nor_narrowed_is_not_told()
    {
        var run = SampleLearning.Usual.Build();
        Assert.DoesNotContain(LearntSentences.Of(run), said => said.Contains("width", StringComparison.OrdinalIgnoreCase));
        var same = run with { Unknowns = [.. run.Unknowns.Select(one => one with { After = one.Before })] };
        Assert.StartsWith("Nothing that the case left open", Assert.Single(LearntSentences.Of(same)), StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_that_moved_without_narrowing_is_told()
    {
        var run = SampleLearning.Usual.Build() with { Unknowns = [new("basic density", "kg/m³", new(520, 560, 600), new(560, 600, 640))] };
        Assert.Equal("Basic density: 600 kg/m³ (560 to 640); the case alone said 560 (520 to 600).", Assert.Single(LearntSentences.Of(run)));
    }

    [Fact]
    public void Reading_worth_nothing_is_not_asked_for()
    {
        var run = SampleLearning.Usual.Build() with { Next = [new("weigh 12 again", null, "12", false, 62, 61.9)] };
        Assert.StartsWith("No single reading today", Assert.Single(NextSentences.Of(run)), StringComparison.Ordinal);
    }

    [Fact]
    public void Fewer_splits_of_the_same_reading_stand_beside_it_and_leave_room_for_other_readings()
    {
        var said = NextSentences.Of(SampleLearning.Usual.Build());
        Assert.Equal(3, said.Count);
        Assert.Contains("For less work: split one open and probe its core (12 days).", said[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Oven_among_what_is_asked_for_brings_its_caution()
    {
        var run = SampleLearning.Usual.Build();
        Assert.Contains(NextSentences.Cautions(run), said => said.Contains("fire", StringComparison.Ordinal));
        var weighing = run with { Next = [new("weigh 12 again", null, "12", false, 62, 50)] };
        Assert.DoesNotContain(NextSentences.Cautions(weighing), said => said.StartsWith("Oven", StringComparison.Ordinal));
    }

    [Fact]
    public void Suspect_bound_is_said_as_a_bound()
    {
        var run = SampleLearning.Usual.Build() with { Observations = [SampleObservations.UnderRange with { ChanceWrong = 0.8 }] };
        var said = Assert.Single(SuspectSentences.Of(run));
        Assert.Contains("It says at most 7.0 % dry basis; the others lead one to expect 9.8 to 15.0 % dry basis (9 in 10).", said, StringComparison.Ordinal);
        Assert.Contains("rain, dew or frost", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_that_damp_air_does_not_bring_back_says_so()
    {
        var run = SampleLearning.OverDry.Build() with { OverDry = new(0.86, 0.87, null) };
        Assert.Contains("the air of this run does not bring half of them back by 9 May 2027", OverDrySentence.Of(run), StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_made_it_no_surer_are_told_as_such()
    {
        var run = SampleLearning.Usual.Build();
        Assert.Contains("made it no surer", new AnswerSentences(run with { LotWindowBefore = run.LotWindow }).Change, StringComparison.Ordinal);
    }

    [Fact]
    public void Marked_split_in_or_under_the_band_is_not_to_be_waited_for()
    {
        var run = SampleLearning.Usual.Build();
        Assert.All(PieceSentences.Of(run), said => Assert.Contains("Pull ", said, StringComparison.Ordinal));
        Assert.All(PieceSentences.Of(run with { Today = 240 }), said => Assert.DoesNotMatch("does not come", said));
        Assert.All(PieceSentences.Of(run with { Today = 400 }), said => Assert.EndsWith("It is drier than your band already.", said, StringComparison.Ordinal));
    }

    [Fact]
    public void Story_never_shows_a_bare_percent_for_moisture() => Assert.All(
        LearningSamples.All.Values.Select(sample => sample.Build()),
        run => Assert.DoesNotMatch(@"\d % (?!dry basis)", string.Join(' ', new AnswerSentences(run).Answer.Split(" The chance")[0], TodaySentences.Inside(run), string.Join(' ', PieceSentences.Of(run)))));
}
