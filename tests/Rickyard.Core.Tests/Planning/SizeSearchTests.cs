using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Rickyard.Testing.Planning;
using Xunit;

namespace Rickyard.Core.Tests.Planning;

public sealed class SizeSearchTests
{
    private static readonly Dictionary<WeatherName, WeatherScenario> Indoors = [];

    private static readonly SizeRequest Question = new(30, Members: 8);

    private static readonly SizeAnswer Found = Answer(SizeCase.InAir(), Question);

    [Fact]
    public void Answer_is_ready_and_the_next_step_is_not()
    {
        var width = Assert.NotNull(Found.Largest);
        Assert.InRange(width, 0.05, 0.25);
        Assert.True(Chance(Found, width) >= 0.9);
        Assert.True(Chance(Found, width + 0.005) < 0.9);
    }

    [Fact]
    public void Own_size_of_the_case_is_among_those_tried() => Assert.Contains(Found.Trials, trial => Math.Abs(trial.Width - 0.11) < 1e-9);

    [Fact]
    public void Chance_falls_and_ready_day_rises_with_size_in_every_member()
    {
        SizeTrial[] ladder = [.. new[] { 0.05, 0.08, 0.11, 0.14 }.Select(Trial)];
        foreach (var (small, large) in ladder.Zip(ladder.Skip(1)))
        {
            Assert.All(small.FirstDays.Zip(large.FirstDays), days => Assert.True(days.First < days.Second || double.IsInfinity(days.Second)));
            Assert.All(Enumerable.Range(1, 60), day => Assert.True(small.ChanceBy(day) >= large.ChanceBy(day)));
        }
    }

    [Fact]
    public void More_time_allows_wider_splits_and_more_certainty_asks_for_narrower_ones()
    {
        Assert.True(Answer(SizeCase.InAir(), Question with { NeededDays = 60 }).Largest > Found.Largest);
        Assert.True(Answer(SizeCase.InAir(), Question with { Confidence = 0.5 }).Largest > Found.Largest);
    }

    [Fact]
    public void Same_seed_gives_the_same_answer_from_any_own_size()
    {
        var wide = SizeCase.InAir();
        Assert.Equal(Found.Largest, Answer(wide with { Split = SplitWidth.Resized(wide.Split, 0.2) }, Question).Largest);
    }

    [Fact]
    public void Size_that_cannot_be_had_is_told_by_the_smallest()
    {
        var answer = Answer(SizeCase.InAir(), Question with { NeededDays = 1 });
        Assert.Null(answer.Largest);
        Assert.Equal(SizeSteps.Smallest, answer.Trials[0].Width);
        Assert.Equal(SizeSteps.Smallest, SplitWidth.Across(answer.Run.Case.Split), 1e-9);
        Assert.False(answer.LargestPasses);
    }

    [Fact]
    public void Air_too_damp_for_the_band_lets_no_size_pass() => Assert.Null(Answer(SizeCase.InAir(20, 0.95), Question with { NeededDays = 200 }).Largest);

    [Fact]
    public void Largest_tried_passes_where_there_is_time_enough()
    {
        var answer = Answer(SizeCase.InAir(80, 0.1), Question with { NeededDays = 900 });
        Assert.True(answer.LargestPasses);
        Assert.Equal(SizeSteps.Largest, answer.Largest);
    }

    [Fact]
    public void Spread_of_sizes_in_the_lot_is_left_out_of_a_widest_width() => Assert.Equal(0, Found.Run.Case.SizeSpread);

    [Fact]
    public void Periods_of_a_history_are_gone_through_in_their_order()
    {
        var damp = SizeCase.Of([new SteadyPeriod(25, 20, 0.95, 1), new SteadyPeriod(null, 40, 0.30, 1)]);
        Assert.True(Answer(damp, Question).Largest is not { } width || width < Found.Largest);
    }

    [Theory]
    [InlineData(-3, 0.2, 0.9, "needed by", "3 days before")]
    [InlineData(0, 0.2, 0.9, "needed by", "at the start")]
    [InlineData(4000, 0.2, 0.9, "needed by", "10 years")]
    [InlineData(double.NaN, 0.2, 0.9, "needed by", "1 hour to 10 years")]
    [InlineData(30, 0.2, 0.4, "confidence", "50 to 99 %")]
    [InlineData(30, 0.2, 1, "confidence", "50 to 99 %")]
    [InlineData(30, 0.6, 0.9, "start.moisture", "every size is ready")]
    public void Question_without_an_answer_is_a_problem_that_says_what_to_do(double days, double band, double confidence, string field, string words)
    {
        var problem = Assert.Single(Search(SizeCase.InAir(), new(days, band, confidence)).Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(words, problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Splitting_again_on_the_way_is_refused()
    {
        var history = SizeCase.Of([new SteadyPeriod(10, 40, 0.3, 1), new SplitAgainPeriod(2), new SteadyPeriod(null, 40, 0.3, 1)]);
        Assert.Equal("history", Assert.Single(Search(history, Question).Problems).Field);
    }

    [Fact]
    public void Progress_rises_to_at_most_one_and_stopping_stops()
    {
        using var stop = new CancellationTokenSource();
        List<double> heard = [];
        Assert.Throws<OperationCanceledException>(() => SizeSearch.Run(SizeCase.InAir(), Question, Indoors, new Listener(value =>
        {
            lock (heard) heard.Add(value);
            stop.Cancel();
        }), stop.Token));
        Assert.All(heard, value => Assert.InRange(value, 0, 1));
    }

    private static double Chance(SizeAnswer answer, double width) => Assert.Single(answer.Trials, trial => Math.Abs(trial.Width - width) < 1e-9).ChanceBy(answer.Request.NeededDays);

    private static SizeTrial Trial(double width) =>
        new(width, new SizeRuns(SizeCase.InAir(), new(8, 1, 0.1, 0.2), Indoors, CancellationToken.None).Run(width, 60, 60).Window.FirstDays);

    private static SizeAnswer Answer(DryingCase drying, SizeRequest request) => Search(drying, request).Value!;

    private static Result<SizeAnswer> Search(DryingCase drying, SizeRequest request) => SizeSearch.Run(drying, request, Indoors, null, TestContext.Current.CancellationToken);

    private sealed class Listener(Action<double> hear) : IProgress<double>
    {
        public void Report(double value) => hear(value);
    }
}
