using CsvHelper;
using Rickyard.Core.Learning;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>A forecast that has learnt as a table with a row a report: bands of a split, of the lot's middle split and of the case before any reading, and the share in the band.</summary>
internal static class LearnCsv
{
    private static readonly (string Name, Func<LearningRun, IReadOnlyList<Spread>> Values)[] Lots =
        [("lot_core_pct_dry", run => run.LotCore), ("core_before_pct_dry", run => run.CoreBefore), ("share_in_band_pct", run => run.ShareInBand)];

    public static byte[] Write(LearningRun run)
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            csv.WriteRecord([.. Heads()]);
            for (var report = 0; report < run.Days.Length; report++) csv.WriteRecord([.. Cells(run, report)]);
        }

        return bytes.ToArray();
    }

    private static IEnumerable<string> Heads() =>
    [
        "day", "date", .. SpreadColumns.Parts.SelectMany(part => SeriesColumn.All.Select(column => $"{part.Name}_{column.Name}")),
        .. Lots.SelectMany(lot => SpreadColumns.Parts.Select(part => $"{part.Name}_{lot.Name}")),
    ];

    private static IEnumerable<string> Cells(LearningRun run, int report) =>
    [
        RunCsv.Rounded(run.Days[report], 4), new RunClock(run.Case, run.Days[^1]).Iso(run.Days[report]) ?? "",
        .. SpreadColumns.Bands(run).SelectMany(band => SeriesColumn.All.Select(column => RunCsv.Rounded(column.Scale * column.Values(band.Series)[report], column.Decimals))),
        .. Lots.SelectMany(lot => SpreadColumns.Parts.Select(part => RunCsv.Rounded(100 * part.Value(lot.Values(run)[report]), 3))),
    ];
}
