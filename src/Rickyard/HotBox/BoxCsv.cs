using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>What a hot box adds to the table of a run: its air, then every class by its number; nothing where there is no box.</summary>
internal static class BoxCsv
{
    public static IEnumerable<string> Heads(DryingRun run) => run.Charge is { } charge
        ? [.. BoxColumn.All.Select(column => column.Name), .. Enumerable.Range(1, charge.Classes.Count).SelectMany(ClassHeads)]
        : [];

    public static IEnumerable<string> Cells(DryingRun run, int report) => run.Charge is { } charge
        ? [.. BoxColumn.All.Select(column => RunCsv.Rounded(column.Scale * column.Values(charge.Series)[report], column.Decimals)), .. charge.Classes.SelectMany(one => ClassCells(one, report))]
        : [];

    private static IEnumerable<string> ClassHeads(int number) =>
        new[] { "", "p10_", "p50_", "p90_" }.SelectMany(band => SeriesColumn.All.Select(column => Invariant($"class_{number}_{band}{column.Name}")));

    private static IEnumerable<string> ClassCells(ClassRun one, int report) => SeriesColumn.Bands(one).Select(band => band.Series).Prepend(one.Typical)
        .SelectMany(series => SeriesColumn.All.Select(column => RunCsv.Rounded(column.Scale * column.Values(series)[report], column.Decimals)));
}
