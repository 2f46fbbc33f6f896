using CsCheck;
using Rickyard.Core.Boxes.HeatTreatment;
using Xunit;

namespace Rickyard.Core.Tests.Boxes.HeatTreatment;

public sealed class HoldSearchTests
{
    private static readonly HeatSchedule Sixty = HeatSchedules.All.Single(schedule => schedule.Celsius == 60);

    // National Plant Board firewood guidelines (1 Jan 2020); ISPM 15: 60 °C/60 min, 56 °C/30 min, 71.1 °C (160 °F)/75 min.
    [Fact]
    public void Schedules_are_the_published_ones() => Assert.Equal(
        [(60, 60), (56, 30), (71.1, 75)], HeatSchedules.All.Select(schedule => (schedule.Celsius, schedule.Minutes)));

    [Fact]
    public void Hold_of_exactly_the_minutes_counts_and_one_reading_less_does_not()
    {
        var exact = Enumerable.Repeat(60.0, 13).ToArray();
        Assert.True(Find(AnyLog.Every(5, [40, .. exact, 40]), 0).IsHeld);
        Assert.False(Find(AnyLog.Every(5, [40, .. exact[1..], 40]), 0).IsHeld);
    }

    [Fact]
    public void Accuracy_of_the_sensors_is_taken_off()
    {
        var log = AnyLog.Every(5, [.. Enumerable.Repeat(60.4, 20)]);
        Assert.True(Find(log, 0.4).IsHeld);
        Assert.False(Find(log, 0.5).IsHeld);
    }

    [Fact]
    public void Coldest_sensor_decides_and_is_named()
    {
        double[] seconds = [.. Enumerable.Range(0, 40).Select(reading => reading * 300.0)], early = [.. seconds.Select(_ => 65.0)];
        double[] late = [.. seconds.Select((_, reading) => reading < 10 ? 50.0 : 61)];
        var found = Find(AnyLog.Of(seconds, early, late, early), 0.5);
        Assert.Equal(("core 2", 3000.0, 3000 + 3600.0), (found.Slowest, found.Proof!.Start, found.FullAt));
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(5.1, false)]
    public void Gap_of_more_than_five_minutes_breaks_a_hold(double minutes, bool held) =>
        Assert.Equal(held, Find(AnyLog.Every(minutes, [.. Enumerable.Repeat(65.0, 30)]), 0.5).IsHeld);

    [Fact]
    public void Missing_reading_of_one_sensor_breaks_the_hold_of_the_batch()
    {
        double[] seconds = [.. Enumerable.Range(0, 13).Select(reading => reading * 300.0)], whole = [.. seconds.Select(_ => 65.0)];
        double[] broken = [.. whole];
        broken[6] = double.NaN;
        Assert.True(Find(AnyLog.Of(seconds, whole, whole), 0.5).IsHeld);
        Assert.False(Find(AnyLog.Of(seconds, whole, broken), 0.5).IsHeld);
    }

    [Fact]
    public void Holds_are_the_stretches_that_a_reading_by_reading_count_finds() => AnyLog.Near60.Sample(log =>
    {
        bool[] good = [.. log.Seconds.Select((_, reading) => log.Celsius.All(sensor => sensor[reading] - 0.5 >= 60))];
        var pairs = Enumerable.Range(1, good.Length - 1).Where(reading => good[reading] && good[reading - 1] && log.Seconds[reading] - log.Seconds[reading - 1] <= 300);
        var holds = HoldSearch.All(log, 60, 0.5);
        Assert.Equal(pairs.Sum(reading => log.Seconds[reading] - log.Seconds[reading - 1]), holds.Sum(hold => 60 * hold.Minutes), 1e-6);
        Assert.Equal(good.Count(is60 => is60), holds.Sum(hold => hold.Last - hold.First + 1));
    });

    [Fact]
    public void Colder_reading_a_hotter_schedule_or_a_wider_margin_never_makes_a_hold_longer() => Gen.Select(AnyLog.Near60, Gen.Double[0, 3]).Sample((log, less) =>
    {
        var colder = log with { Celsius = [.. log.Celsius.Select(sensor => (double[])[.. sensor.Select(celsius => celsius - less)])] };
        Assert.True(Longest(colder, 60, 0.5) <= Longest(log, 60, 0.5));
        Assert.True(Longest(log, 60 + less, 0.5) <= Longest(log, 60, 0.5));
        Assert.True(Longest(log, 60, 0.5 + less) <= Longest(log, 60, 0.5));
    });

    [Fact]
    public void Another_sensor_never_makes_a_hold_longer() => AnyLog.Near60.Where(log => log.Sensors.Count > 1).Sample(log =>
        Assert.True(Longest(log, 60, 0.5) <= Longest(log with { Sensors = [.. log.Sensors.Skip(1)], Celsius = [.. log.Celsius.Skip(1)] }, 60, 0.5)));

    [Fact]
    public void Fitness_asks_three_cores_air_five_minutes_and_half_a_degree()
    {
        var seconds = new double[] { 0, 300, 600 };
        double[] core = [60, 60, 60];
        var fit = AnyLog.Of(seconds, core, core, core) with { AirSensors = ["air"] };
        Assert.True(HeatRecord.Of(fit, 0.5).Fitness.IsFit);
        Assert.False(HeatRecord.Of(fit, 0.6).Fitness.IsExactEnough);
        Assert.False(HeatRecord.Of(fit with { Sensors = ["one", "two"], Celsius = [core, core] }, 0.5).Fitness.HasEnoughSensors);
        Assert.False(HeatRecord.Of(fit with { Seconds = [0, 300, 700] }, 0.5).Fitness.IsOftenEnough);
        Assert.False(HeatRecord.Of(fit with { Celsius = [core, core, [60, double.NaN, 60]] }, 0.5).Fitness.IsOftenEnough);
        Assert.False(HeatRecord.Of(fit with { AirSensors = [] }, 0.5).Fitness.IsFit);
    }

    private static ScheduleFinding Find(CoreLog log, double accuracy) => HeatRecord.Of(log, accuracy).Findings.Single(finding => finding.Schedule == Sixty);

    private static double Longest(CoreLog log, double celsius, double margin) => HoldSearch.All(log, celsius, margin).Select(hold => hold.Minutes).DefaultIfEmpty(-1).Max();
}
