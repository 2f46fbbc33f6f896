using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>The middle of the lot when it is ready, or at the end of the run: every part of it, the gap, and what it weighs.</summary>
internal static class StateSentence
{
    private const double SmallGap = 0.03;
    private const double LargeGap = 0.06;

    public static string Of(DryingRun run)
    {
        var day = run.Window.From.Middle ?? run.Days[^1];
        double At(double[] values) => Curve.At(run.Days, values, day);
        var series = run.Median;
        var (core, shell, end) = (At(series.Core), At(series.Shell), At(series.End));
        var parts = $"The middle of the lot then: core {Say.Percent(core)}, shell {Say.Percent(shell)}, end grain {Say.Percent(end)}, whole piece {Say.Percent(At(series.Mean))} % dry basis.";
        var loss = At(series.LossFraction);
        var change = $"{Say.Share(Math.Abs(loss))} {(loss >= 0 ? "less" : "more")}";
        var weight = run.Case.Periods.Any(period => period is SplitAgainPeriod)
            ? $"A piece weighs {Say.Mass(At(series.MassKilograms))}; what was one piece at the start weighs {change} in all."
            : $"A piece weighs {Say.Mass(At(series.MassKilograms))}, {change} than the {Say.Mass(series.MassKilograms[0])} of the start.";
        return $"{parts} {Gap(core - shell)} {weight}";
    }

    private static string Gap(double gap) => gap switch
    {
        < -0.005 => $"The shell is {Say.Points(gap)} wetter than the core.",
        < 0.005 => "Core and shell are even.",
        <= SmallGap => $"The shell is {Say.Points(gap)} drier than the core, a small gap.",
        <= LargeGap => $"The shell is {Say.Points(gap)} drier than the core.",
        _ => $"The shell is {Say.Points(gap)} drier than the core, a large gap: a reading on the outside will mislead, so split one open.",
    };
}
