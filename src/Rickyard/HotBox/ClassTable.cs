using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>The classes of a charge beside one another: when ready, and what the middle of each class is then and at the end.</summary>
internal static class ClassTable
{
    /// <summary>A letter a column.</summary>
    public const string Alignment = "lrlrrrrr";

    public static IReadOnlyList<string> Heads { get; } =
        ["class", "pieces", "shelf", "ready", "when ready", "kg", "at the end", "kg"];

    public static IEnumerable<IReadOnlyList<string>> Of(DryingRun run, ChargeRun charge) => charge.Classes.Select(one => Row(run, one));

    /// <summary>"16.7/20.0/10.4".</summary>
    public static string Three(double mean, double core, double shell) => $"{Say.Percent(mean)}/{Say.Percent(core)}/{Say.Percent(shell)}";

    private static IReadOnlyList<string> Row(DryingRun run, ClassRun one) =>
    [
        one.Class.Name, Invariant($"{one.Class.Pieces}"), StageWords.Of(one.Class.Shelf),
        .. WhenReady(run, one),
        .. State(run, one.Median, run.Days[^1]),
    ];

    private static IEnumerable<string> WhenReady(DryingRun run, ClassRun one) =>
        one.Window.From.Middle is { } day ? [Invariant($"{day:0.0}"), .. State(run, one.Median, day)] : ["–", "–", "–"];

    private static string[] State(DryingRun run, MoistureSeries series, double day)
    {
        double At(double[] values) => Curve.At(run.Days, values, day);
        return [Three(At(series.Mean), At(series.Core), At(series.Shell)), Invariant($"{At(series.MassKilograms):0.00}")];
    }
}
