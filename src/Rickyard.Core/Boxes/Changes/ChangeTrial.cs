using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Changes;

/// <summary>Tries changes one at a time on a coarse grid: how long until as much water is off as now at the end of the first drying stage.</summary>
internal static class ChangeTrial
{
    private const int Reports = 40;
    private const double MoreHeater = 1.5, BetterInsulated = 0.5, MoreVent = 2, MoreWind = 2, WarmerBy = 6, Finer = 0.7;

    /// <summary>Longest that a change is given to come as low, over the time now.</summary>
    private const double Longest = 1.5;

    /// <summary>Every change that applies, best first; none where nothing dries.</summary>
    internal static IReadOnlyList<ChangeGain> All(BoxPlan plan, IReadOnlyList<ChargeClass> charge, OutsideSeries outside, double days, double highestCelsius, CancellationToken cancellation)
    {
        if (plan.Stages.FirstOrDefault(stage => stage.Kind == StageKind.Drying) is not { } drying) return [];
        var length = Math.Min(days, drying.Days ?? days);
        var now = Means(plan, drying, charge, outside, length, cancellation);
        var reached = now.Means[^1];
        var changes = Enum.GetValues<BoxChange>().Select(change => (Change: change, Applied: Apply(change, plan, drying, charge, highestCelsius))).Where(one => one.Applied is not null).ToArray();
        var gains = new ChangeGain[changes.Length];
        Parallel.For(0, changes.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            var (box, stage, other) = changes[i].Applied!.Value;
            var then = Means(plan with { Box = box }, stage, other, outside, Longest * length, cancellation);
            gains[i] = new(changes[i].Change, TimeTo(reached, then.Days, then.Means) / length);
        });
        return [.. gains.OrderBy(gain => gain.TimeShare)];
    }

    private static (BoxDescription Box, BoxStage Stage, IReadOnlyList<ChargeClass> Charge)? Apply(
        BoxChange change, BoxPlan plan, BoxStage stage, IReadOnlyList<ChargeClass> charge, double highestCelsius)
    {
        var (box, vent) = (plan.Box, stage.Vent ?? plan.Box.Vent);
        return change switch
        {
            BoxChange.StrongerHeater when box.Heater.Power > 0 => (box with { Heater = box.Heater with { Power = MoreHeater * box.Heater.Power } }, stage, charge),
            BoxChange.BetterWalls => (box with { WallConductance = BetterInsulated * box.WallConductance }, stage, charge),
            BoxChange.LargerVent when vent is { Flow: > 0 } or { Opening: > 0 } =>
                (box, stage with { Vent = vent with { Flow = MoreVent * vent.Flow, Opening = MoreVent * vent.Opening } }, charge),
            BoxChange.FasterFan when box.Fan.Speed > 0 => (box with { Fan = box.Fan with { Speed = MoreWind * box.Fan.Speed, Flow = MoreWind * box.Fan.Flow } }, stage, charge),
            BoxChange.LooserPacking when charge.Any(one => one.ExposedShare < 1) => (box, stage, [.. charge.Select(one => one with { ExposedShare = 1 })]),
            BoxChange.Warmer when stage.Celsius + WarmerBy <= highestCelsius => (box, stage with { Celsius = stage.Celsius + WarmerBy }, charge),
            BoxChange.FinerSplits => (box, stage, [.. charge.Select(Cut)]),
            BoxChange.HalfTheCharge when charge.Any(one => one.Pieces > 1) => (box, stage, [.. charge.Select(one => one with { Pieces = Math.Max(1, one.Pieces / 2) })]),
            _ => null,
        };
    }

    private static ChargeClass Cut(ChargeClass one) =>
        one with { Wood = one.Wood with { Split = one.Wood.Split.ScaledAcross(Finer) }, Pieces = (int)Math.Round(one.Pieces / (Finer * Finer)) };

    private static (double[] Days, double[] Means) Means(
        BoxPlan plan, BoxStage stage, IReadOnlyList<ChargeClass> charge, OutsideSeries outside, double days, CancellationToken cancellation)
    {
        double[] times = [.. Enumerable.Range(0, Reports + 1).Select(i => days * i / Reports)];
        var run = new BoxRun(plan with { Stages = [stage with { Days = null }] }, charge, outside, times, ScheduleSearch.Coarse, StepControl.Forecast)
            .Run(new HashSet<int>(), cancellation);
        var mass = charge.Select(one => one.Pieces * one.Wood.Split.Volume * one.Wood.BasicDensity).ToArray();
        return (times, [.. Enumerable.Range(0, times.Length).Select(report => run.Typical.Select((series, i) => mass[i] * series.Mean[report]).Sum() / mass.Sum())]);
    }

    private static double TimeTo(double level, double[] days, double[] means)
    {
        var report = Array.FindIndex(means, mean => mean <= level);
        if (report <= 0) return report == 0 ? 0 : days[^1];
        return days[report - 1] + (days[report] - days[report - 1]) * (means[report - 1] - level) / Math.Max(1e-12, means[report - 1] - means[report]);
    }
}
