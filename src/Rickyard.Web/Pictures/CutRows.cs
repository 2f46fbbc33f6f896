using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>The split cut open, a row for each day, for a narrow page.</summary>
internal sealed class CutRows(IDrawing drawing, Palette palette, DryingRun run)
{
    private const double AcrossWidth = 128;
    private const double AlongWidth = 204;
    private const double RowGap = 24;

    private readonly CutView _view = new(drawing, palette, run.Window.BandLow, run.Window.BandHigh);

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("cuts");
        var pairs = CutPair.Of(run.Snapshots, new(AcrossWidth, 120), new(AlongWidth, 96));
        var top = DrawNames(box, pairs[0]);
        foreach (var pair in pairs) top = DrawRow(pair, box with { Top = top }) + RowGap;
        drawing.End();
        return top - RowGap;
    }

    private double DrawNames(Box box, CutPair pair)
    {
        DrawName("Across, at mid-length", box.Left, box.Top, pair.AcrossScale);
        DrawName("Along, through the middle", box.Right - AlongWidth, box.Top, pair.AlongScale);
        return box.Top + 54;
    }

    private void DrawName(string name, double left, double top, double scale)
    {
        drawing.Write(name, new(left, top + 12), new(12, palette.Ink));
        LengthBar.Draw(drawing, palette, new(left, top + 24), scale);
    }

    private double DrawRow(CutPair pair, Box box)
    {
        var day = pair.Snapshot.Day;
        double core = RunWords.At(run, run.Typical.Core, day), shell = RunWords.At(run, run.Typical.Shell, day);
        var height = Math.Max(pair.AcrossRoom.Height, pair.AlongRoom.Height);
        var middle = box.Top + 30 + height / 2;
        DrawHead(day, box);
        _view.Draw(pair.Across, new(box.Left + AcrossWidth / 2, middle), pair.AcrossScale);
        _view.Draw(pair.Along, new(box.Right - AlongWidth / 2, middle), pair.AlongScale);
        var numbers = box.Top + 30 + height + 24;
        drawing.Write($"core {RunWords.Percent(core)}, shell {RunWords.Percent(shell)} % dry basis", new(box.Left, numbers), new(14, palette.Ink));
        DrawVerdict(core, new(box.Right, numbers));
        return numbers + 8;
    }

    private void DrawHead(double day, Box box)
    {
        drawing.Line([new(box.Left, box.Top - 8), new(box.Right, box.Top - 8)], new(palette.Hairline, 1, Blunt: true));
        drawing.Write(FormattableString.Invariant($"Day {day:0.#}"), new(box.Left, box.Top + 14), new(15, palette.Ink, Bold: true));
        if (run.Case.Start.IsDated) drawing.Write(CalendarWords.Date(CalendarWords.After(run.Case.StartDate, day)), new(box.Right, box.Top + 14), new(13, palette.Muted, Anchor: Anchor.End));
    }

    private void DrawVerdict(double core, Point at)
    {
        var inBand = RunWords.IsInBand(run, core);
        drawing.Write(RunWords.Verdict(run, core), at, new(12, inBand ? palette.Accent : palette.Muted, inBand, Anchor.End));
    }
}
