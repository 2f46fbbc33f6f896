using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>The split cut open, a column for each day: across, along, and the moistures beneath. More than six days go into further rows.</summary>
internal sealed class CutTable(IDrawing drawing, Palette palette, DryingRun run)
{
    /// <summary>Room for the names of the rows, left of the columns. [px]</summary>
    public const double Gutter = 172;

    private const int MostColumns = 6;
    private const double Gap = 26;
    private const double AcrossHeight = 168;
    private const double AlongHeight = 100;

    private readonly CutView _view = new(drawing, palette, run.Window.BandLow, run.Window.BandHigh);

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("cuts");
        var rows = (int)Math.Ceiling((double)run.Snapshots.Count / MostColumns);
        var columns = (int)Math.Ceiling((double)run.Snapshots.Count / rows);
        var width = Math.Min(240, (box.Width - Gutter) / columns);
        var pairs = CutPair.Of(run.Snapshots, new(width - Gap, AcrossHeight), new(width - Gap, AlongHeight));
        var top = box.Top;
        foreach (var row in pairs.Chunk(columns)) top = DrawRow(row, new(box.Left, top, width, 0)) + 30;
        drawing.End();
        return top - 30;
    }

    private double DrawRow(CutPair[] pairs, Box box)
    {
        double head = box.Top + 38, acrossHeight = pairs[0].AcrossRoom.Height, alongHeight = pairs[0].AlongRoom.Height;
        double across = head + 8 + acrossHeight / 2, along = head + 8 + acrossHeight + 26 + alongHeight / 2, numbers = along + alongHeight / 2 + 34;
        DrawNames(box.Left, across, along, numbers, pairs[0]);
        for (var column = 0; column < pairs.Length; column++)
        {
            var middle = box.Left + Gutter + box.Width * (column + 0.5) - Gap / 2;
            DrawHead(pairs[column].Snapshot.Day, middle, box.Top);
            _view.Draw(pairs[column].Across, new(middle, across), pairs[column].AcrossScale);
            _view.Draw(pairs[column].Along, new(middle, along), pairs[column].AlongScale);
            DrawNumbers(pairs[column].Snapshot.Day, middle, numbers);
        }

        return numbers + 44;
    }

    private void DrawNames(double left, double across, double along, double numbers, CutPair pair)
    {
        DrawName("Across the grain", "at mid-length", left, across, pair.AcrossScale);
        DrawName("Along the grain", "through the middle", left, along, pair.AlongScale);
        drawing.Write("Core, % dry basis", new(left, numbers), new(13, palette.Ink, Bold: true));
        drawing.Write("Shell, % dry basis", new(left, numbers + 21), new(13, palette.Ink));
    }

    private void DrawName(string name, string place, double left, double middle, double scale)
    {
        drawing.Write(name, new(left, middle - 12), new(13, palette.Ink, Bold: true));
        drawing.Write(place, new(left, middle + 6), new(13, palette.Muted));
        LengthBar.Draw(drawing, palette, new(left, middle + 22), scale);
    }

    private void DrawHead(double day, double middle, double top)
    {
        drawing.Write(FormattableString.Invariant($"Day {day:0.#}"), new(middle, top + 14), new(15, palette.Ink, Bold: true, Anchor.Middle));
        if (run.Case.Start.IsDated) drawing.Write(CalendarWords.Date(CalendarWords.After(run.Case.StartDate, day)), new(middle, top + 32), new(13, palette.Muted, Anchor: Anchor.Middle));
    }

    private void DrawNumbers(double day, double middle, double top)
    {
        var core = RunWords.At(run, run.Typical.Core, day);
        var inBand = RunWords.IsInBand(run, core);
        drawing.Write(RunWords.Percent(core), new(middle, top), new(16, inBand ? palette.Accent : palette.Ink, Bold: true, Anchor.Middle));
        drawing.Write(RunWords.Percent(RunWords.At(run, run.Typical.Shell, day)), new(middle, top + 21), new(14, palette.Ink, Anchor: Anchor.Middle));
        drawing.Write(RunWords.Verdict(run, core), new(middle, top + 42), new(12, inBand ? palette.Accent : palette.Muted, inBand, Anchor.Middle));
    }
}
