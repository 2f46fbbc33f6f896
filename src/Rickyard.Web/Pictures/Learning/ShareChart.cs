using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Chart;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>Under the curves, along the same days: the share of splits whose core is in the cook's band, with its uncertainty.</summary>
internal sealed class ShareChart(IDrawing drawing, Palette palette, LearningRun run, LearningPlace place)
{
    private const double Thinning = 0.1;

    private Box _plot;

    /// <summary>Draws it into a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        _plot = place.Plot(box, 46, 40);
        drawing.Begin("share");
        drawing.Write("How many are in your band", new(box.Left, box.Top + 13), new(13, palette.Ink, Bold: true));
        drawing.Write($"splits with a core of {LearningWords.Band(run)}, % of the lot", new(box.Left, box.Top + 31), new(13, palette.Muted));
        DrawAxes();
        drawing.Fill([Outline.Thinned([.. Points(share => share.High), .. Points(share => share.Low).Reverse()], Thinning)], palette.Shade, 0.25);
        DrawMiddle();
        new TodayLine(drawing, palette, run).Draw(_plot, place.X(_plot, run.Today), withWords: false);
        drawing.End();
        return box.Bottom;
    }

    private double Y(double share) => _plot.Bottom - _plot.Height * Math.Clamp(share, 0, 1);

    private IEnumerable<Point> Points(Func<Spread, double> part) => run.Days.Select((day, i) => new Point(place.X(_plot, day), Y(part(run.ShareInBand[i]))));

    private void DrawAxes()
    {
        foreach (var level in new[] { 0, 0.5, 1 })
        {
            drawing.Line([new(_plot.Left, Y(level)), new(_plot.Right, Y(level))], new(palette.Hairline, 1, Blunt: true));
            drawing.Write(FormattableString.Invariant($"{100 * level:0}"), new(_plot.Left - 8, Y(level) + 4), new(12, palette.Muted, Anchor: Anchor.End));
        }

        foreach (var tick in TimeAxis.Ticks(run.Case.Start, run.Days[^1], place.MostTicks))
        {
            var x = place.X(_plot, tick.Day);
            drawing.Line([new(x, _plot.Bottom), new(x, _plot.Bottom + 5)], new(palette.Muted, 1, Blunt: true));
            drawing.Write(tick.Label, new(x, _plot.Bottom + 20), new(12, palette.Muted, Anchor: Anchor.Middle));
            if (tick.Year is { } year) drawing.Write(year, new(x, _plot.Bottom + 36), new(12, palette.Muted, Anchor: Anchor.Middle));
        }
    }

    private void DrawMiddle()
    {
        var (past, future) = place.Split(_plot, [.. run.ShareInBand.Select(share => share.Middle)], Y);
        drawing.Line(Outline.Thinned(past, Thinning), new(palette.Ink, 2));
        drawing.Line(Outline.Thinned(future, Thinning), new(palette.Ink, 2, Dash.Long, Blunt: true));
        var end = run.ShareInBand[^1].Middle;
        drawing.Write(FormattableString.Invariant($"{100 * end:0} %"), new(_plot.Right + 12, Y(end) + 4.5), new(12, palette.Ink, Bold: true));
    }
}
