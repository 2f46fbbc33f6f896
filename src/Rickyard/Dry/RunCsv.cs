using System.Globalization;
using CsvHelper;
using Rickyard.Core.Drying;
using Rickyard.HotBox;

namespace Rickyard.Dry;

/// <summary>A run as a table with a row a report: the typical split, then the bands; units and basis in the column names.</summary>
internal static class RunCsv
{
    public static byte[] Write(DryingRun run)
    {
        using var bytes = new MemoryStream();
        using (var csv = CsvWriter.Create(bytes, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            csv.WriteRecord([.. Heads(), .. BoxCsv.Heads(run)]);
            for (var report = 0; report < run.Days.Length; report++) csv.WriteRecord([.. Cells(run, report), .. BoxCsv.Cells(run, report)]);
        }

        return bytes.ToArray();
    }

    private static IEnumerable<string> Heads()
    {
        var names = SeriesColumn.All.Select(column => column.Name).ToList();
        return ["day", "date", .. names, .. new[] { "p10", "p50", "p90" }.SelectMany(band => names.Select(name => $"{band}_{name}"))];
    }

    private static IEnumerable<string> Cells(DryingRun run, int report)
    {
        var series = SeriesColumn.Bands(run).Select(band => band.Series).Prepend(run.Typical);
        return
        [
            Rounded(run.Days[report], 4), new RunClock(run).Iso(run.Days[report]) ?? "",
            .. series.SelectMany(one => SeriesColumn.All.Select(column => Rounded(column.Scale * column.Values(one)[report], column.Decimals))),
        ];
    }

    /// <summary>A number with no more digits than wanted; empty where there is none.</summary>
    public static string Rounded(double value, int decimals) =>
        double.IsFinite(value) ? Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture) : "";
}
