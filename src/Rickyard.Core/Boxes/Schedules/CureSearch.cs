namespace Rickyard.Core.Boxes.Schedules;

/// <summary>Finds how far each of four things had to change for a goal to be met, in the setting that came nearest, from a ladder of sizes of change.</summary>
internal sealed class CureSearch(TrialBench bench, ScheduleCandidate best)
{
    private static readonly double[] Longer = [1.25, 1.5, 2, 3, 4, 6], Finer = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3], Fewer = [0.75, 0.5, 0.25, 0.1],
        Drier = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4];

    private readonly BoxSettings _settings = new(double.IsNaN(best.Celsius) ? null : best.Celsius, best.HumidityLimit);

    /// <summary>All four.</summary>
    internal IReadOnlyList<ScheduleCure> All()
    {
        double width = bench.Charge.Max(one => one.Wood.Split.SurfaceDiameter), pieces = bench.Charge.Sum(one => one.Pieces), start = bench.Charge.Max(one => one.Wood.Start.Core);
        return
        [
            Cure(CureKind.MoreDays, bench.LatestDays, Longer, factor => (bench.Charge, factor * bench.LatestDays)),
            Cure(CureKind.FinerSplits, width, Finer, factor => (Scaled(factor), bench.LatestDays)),
            Cure(CureKind.FewerPieces, pieces, Fewer, factor => (Thinned(factor), bench.LatestDays)),
            Cure(CureKind.DrierStart, start, Drier, factor => (Dried(factor), bench.LatestDays)),
        ];
    }

    private ScheduleCure Cure(CureKind kind, double from, double[] ladder, Func<double, (IReadOnlyList<ChargeClass> Charge, double Days)> changed)
    {
        foreach (var factor in ladder)
        {
            var (charge, days) = changed(factor);
            if (bench.Nearest(_settings, charge, days) is { } near && near.Miss <= bench.Goal.Tolerance) return new(kind, from, kind == CureKind.MoreDays ? near.Days : from * factor);
        }

        return new(kind, from, null);
    }

    // As much wood in smaller pieces.
    private List<ChargeClass> Scaled(double factor) =>
        [.. bench.Charge.Select(one => one with
        {
            Wood = one.Wood with { Split = one.Wood.Split.ScaledAcross(factor) },
            Pieces = (int)Math.Ceiling(one.Pieces / (factor * factor)),
        })];

    private List<ChargeClass> Thinned(double factor) => [.. bench.Charge.Select(one => one with { Pieces = Math.Max(1, (int)(one.Pieces * factor)) })];

    private List<ChargeClass> Dried(double factor) =>
        [.. bench.Charge.Select(one => one with
        {
            Wood = one.Wood with
            {
                Start = one.Wood.Start with
                {
                    Core = factor * one.Wood.Start.Core, Shell = factor * one.Wood.Start.Shell, End = factor * one.Wood.Start.End, IsGreen = false,
                },
            },
        })];
}
