using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes.Schedules;

public class ScheduleSearchTests
{
    private const double Low = 0.18, High = 0.20;
    private static readonly ChargeClass[] Mixed = [SampleBox.Class(0.06, 20, 0.35), SampleBox.Class(0.08, 12, 0.35)];

    [Fact]
    public void Even_wood_is_pulled_by_its_mean_with_the_core_still_wet_and_then_rested()
    {
        var answer = Search(ChargeGoal.Even, 16, Mixed);

        Assert.True(answer.MeetsGoal);
        Assert.All(answer.Best.Classes, pull =>
        {
            Assert.InRange(pull.MeanAtPull, Low - 0.01, High + 0.01);
            Assert.True(pull.CoreAtPull > High + 0.03, $"core {pull.CoreAtPull} when pulled");
            Assert.True(pull.RestDays > 1, $"rested {pull.RestDays} days");
            Assert.InRange(pull.Core, Low - 0.02, High + 0.02);
        });
    }

    [Fact]
    public void A_search_tries_three_hundred_schedules_and_more() => Assert.True(Search(ChargeGoal.Even, 16, Mixed).Tried.Count >= 300);

    [Fact]
    public void Nothing_on_the_trade_off_is_beaten_by_another_in_all_of_days_energy_and_gap()
    {
        var front = Search(ChargeGoal.UsableNow, 12, Mixed).TradeOff;

        Assert.NotEmpty(front);
        Assert.DoesNotContain(front.Skip(1), one => front.Any(other =>
            !ReferenceEquals(one, other) && other.Days < 0.95 * one.Days && other.EnergyJoules < 0.95 * one.EnergyJoules && other.Gap < one.Gap - 0.01));
    }

    /// <summary>Resting changes no mean: what leaves a closed bin is nothing.</summary>
    [Fact]
    public void A_rest_keeps_the_mean() => Assert.All(
        Search(ChargeGoal.Even, 16, Mixed).Tried.SelectMany(one => one.Classes), pull => Assert.Equal(pull.MeanAtPull, pull.Mean, 0.004));

    [Fact]
    public void What_cannot_be_done_in_time_is_said_with_what_would_do()
    {
        var answer = Search(ChargeGoal.Even, 2, [SampleBox.Class(0.12, 6)]);

        Assert.False(answer.MeetsGoal);
        var days = answer.Cures.Single(cure => cure.Kind == CureKind.MoreDays);
        Assert.True(days.To is null or > 2);
        Assert.Equal(4, answer.Cures.Count);
    }

    [Fact]
    public void A_stopped_search_gives_the_best_so_far()
    {
        using var source = new CancellationTokenSource();
        var answer = ScheduleSearch.Run(Case(Mixed), Request(ChargeGoal.Even, 16), None, new StopAtOnce(source), source.Token).Value!;

        Assert.True(answer.WasStopped);
        Assert.InRange(answer.Tried.Count, 1, 649);
    }

    [Theory]
    [InlineData(ChargeGoal.Even, 0.1, 70, "by")]
    [InlineData(ChargeGoal.Even, 14, 78, "highest")]
    [InlineData(ChargeGoal.Even, 14, 95, "highest")]
    public void What_cannot_be_searched_names_the_value(ChargeGoal goal, double days, double highest, string field)
    {
        var refused = ScheduleSearch.Run(Case(Mixed), new(goal, Low, High, days, highest), None, cancellation: TestContext.Current.CancellationToken);

        Assert.Contains(refused.Problems, problem => problem.Field == field);
    }

    [Fact]
    public void A_target_passed_already_is_refused_by_the_name_of_the_class()
    {
        var refused = ScheduleSearch.Run(Case([SampleBox.Class(0.06, 20, 0.15)]), Request(ChargeGoal.UsableNow, 10), None, cancellation: TestContext.Current.CancellationToken);

        Assert.Contains(refused.Problems, problem => problem.WhatIsWrong.Contains("passed already", StringComparison.Ordinal));
    }

    [Fact]
    public void A_band_below_what_the_box_can_dry_to_is_refused()
    {
        var plan = SampleBox.Plan(SampleBox.Cabinet, 30, outsideCelsius: 28, outsideHumidity: 0.9);
        var refused = ScheduleSearch.Run(Case(Mixed, plan), new(ChargeGoal.UsableNow, 0.04, 0.06, 10, 30), None, cancellation: TestContext.Current.CancellationToken);

        Assert.Contains(refused.Problems, problem => problem.Field == "band");
    }

    private static readonly Dictionary<WeatherName, WeatherScenario> None = [];

    private static ScheduleRequest Request(ChargeGoal goal, double days) => new(goal, Low, High, days, 70, Members: 4);

    private static ScheduleAnswer Search(ChargeGoal goal, double days, ChargeClass[] charge) => ScheduleSearch.Run(Case(charge), Request(goal, days), None).Value!;

    private static DryingCase Case(ChargeClass[] charge, BoxPlan? plan = null) =>
        charge[0].Wood with { Periods = [new BoxPeriod(null, plan ?? SampleBox.Plan(SampleBox.Cabinet, 70))], Charge = charge };

    private sealed class StopAtOnce(CancellationTokenSource source) : IProgress<double>
    {
        public void Report(double value) => source.Cancel();
    }
}
