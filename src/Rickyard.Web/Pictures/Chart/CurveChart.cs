using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Chart;

/// <summary>
/// Moisture against the calendar, on an even axis along which the colours of the cuts stand: the typical split's lines with
/// their names at their ends, the core's spread shaded, the cook's band across, and above the plot when the wood is ready.
/// </summary>
internal sealed class CurveChart(IDrawing drawing, Palette palette, DryingRun run, bool narrow)
{
    private const double RampWidth = 8;
    private const int Shades = 144;
    private const double Thinning = 0.1;

    private static readonly double[] Steps = [0.05, 0.1, 0.2, 0.5, 1];

    private Box _plot;
    private double _top;

    /// <summary>Draws it into a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        double left = narrow ? 58 : CutTable.Gutter, right = narrow ? 78 : 110;
        var head = run.Window.From.Middle is null ? 46 : 76;
        _plot = new(box.Left + left, box.Top + head, box.Width - left - right, box.Height - head - 44);
        _top = Math.Max(0.28, 1.06 * Series().Append(new("", run.HighTenth.Core, default)).Max(series => series.Values.Max()));
        drawing.Begin("curves");
        DrawTitle(box);
        DrawAxes();
        DrawBand();
        DrawReady();
        DrawSpread();
        DrawSeries();
        drawing.End();
        return box.Bottom;
    }

    private IReadOnlyList<Curve> Series() =>
    [
        new("core", run.Typical.Core, new(palette.Ink, 2.6)),
        new("mean", run.Typical.Mean, new(palette.Ink, 1.5, Dash.Long)),
        new("shell", run.Typical.Shell, new(palette.Ink, 1.5, Dash.Short)),
        new("end", run.Typical.End, new(palette.Muted, 2, Dash.Dots)),
        .. IsTypicalMiddle ? Enumerable.Empty<Curve>() : [new("mid lot", run.Median.Core, new(palette.Shade, 1.5))],
    ];

    /// <summary>Whether the middle of the lot cannot be told from the typical split.</summary>
    private bool IsTypicalMiddle => run.Typical.Core.Zip(run.Median.Core, (one, other) => Math.Abs(one - other)).Max() < 0.002;

    private double X(double day) => _plot.Left + _plot.Width * day / Math.Max(run.Days[^1], 1e-9);

    private double Y(double moisture) => _plot.Bottom - _plot.Height * Math.Max(0, moisture) / _top;

    private void DrawTitle(Box box)
    {
        drawing.Write("Through time", new(box.Left, box.Top + 13), new(13, palette.Ink, Bold: true));
        drawing.Write("moisture, % dry basis", new(box.Left, box.Top + 31), new(13, palette.Muted));
    }

    private void DrawAxes()
    {
        var step = Steps.First(step => _top / step < 11);
        for (var level = 0.0; level <= _top; level += step) DrawLevel(level);
        foreach (var tick in TimeAxis.Ticks(run.Case.Start, run.Days[^1], narrow ? 6 : 13)) DrawTime(tick);
        DrawRamp();
    }

    private void DrawLevel(double tick)
    {
        var y = Y(tick);
        drawing.Line([new(_plot.Left, y), new(_plot.Right, y)], new(palette.Hairline, 1, Blunt: true));
        if (Math.Abs(y - BandLabel) < 16) return;
        drawing.Write(FormattableString.Invariant($"{100 * tick:0}"), new(_plot.Left - RampWidth - 8, y + 4), new(12, palette.Muted, Anchor: Anchor.End));
    }

    private void DrawTime(TimeTick tick)
    {
        var x = X(tick.Day);
        drawing.Line([new(x, _plot.Bottom), new(x, _plot.Bottom + 5)], new(palette.Muted, 1, Blunt: true));
        drawing.Write(tick.Label, new(x, _plot.Bottom + 20), new(12, palette.Muted, Anchor: Anchor.Middle));
        if (tick.Year is { } year) drawing.Write(year, new(x, _plot.Bottom + 36), new(12, palette.Muted, Anchor: Anchor.Middle));
    }

    private void DrawRamp()
    {
        for (var shade = 0; shade < Shades; shade++)
        {
            var height = _plot.Height * (Shades - shade) / Shades;
            drawing.Fill([new Box(_plot.Left - RampWidth, _plot.Top, RampWidth, height).Corners], MoistureScale.Colour(_top * (shade + 0.5) / Shades));
        }

        drawing.Line(new Box(_plot.Left - RampWidth, _plot.Top, RampWidth, _plot.Height).Corners, new(palette.Outline, 0.8, Blunt: true), closed: true);
    }

    private double BandLabel => (Y(run.Window.BandLow) + Y(run.Window.BandHigh)) / 2;

    private void DrawBand()
    {
        double high = Y(run.Window.BandHigh), low = Y(run.Window.BandLow);
        drawing.Fill([new Box(_plot.Left, high, _plot.Width, low - high).Corners], palette.Accent, 0.2);
        drawing.Line([new(_plot.Left, high), new(_plot.Right, high)], CutView.HighEdge(palette.Accent) with { Width = 1 });
        drawing.Line([new(_plot.Left, low), new(_plot.Right, low)], CutView.LowEdge(palette.Accent) with { Width = 1 });
        var right = _plot.Left - RampWidth - 8;
        drawing.Write((narrow ? "" : "your band ") + RunWords.Band(run), new(right, BandLabel + 4.5), new(13, palette.Accent, Bold: true, Anchor.End));
    }

    private void DrawReady() => new ReadyLane(drawing, palette, run.Case, run.Window, run.Days[^1], narrow).Draw(_plot, X);

    private void DrawSpread()
    {
        IEnumerable<Point> Edge(double[] values) => run.Days.Select((day, i) => new Point(X(day), Y(values[i])));
        Point[] outline = [.. Edge(run.HighTenth.Core), .. Edge(run.LowTenth.Core).Reverse()];
        drawing.Fill([Outline.Thinned(outline, Thinning)], palette.Shade, 0.22);
    }

    private void DrawSeries()
    {
        var series = Series();
        var ends = Labels.Spread([.. series.Select(one => Y(one.Values[^1]))], 17, _plot.Bottom);
        for (var i = series.Count - 1; i >= 0; i--)
        {
            var curve = series[i];
            drawing.Line(Outline.Thinned([.. run.Days.Select((day, at) => new Point(X(day), Y(curve.Values[at])))], Thinning), curve.Stroke);
            DrawName(curve, ends[i], i == 0);
        }
    }

    private void DrawName(Curve curve, double y, bool bold)
    {
        var end = Y(curve.Values[^1]);
        drawing.Line([new(_plot.Right + 3, end), new(_plot.Right + 9, y)], new(palette.Muted, 0.8));
        drawing.Write($"{curve.Name} {RunWords.Percent(curve.Values[^1])}", new(_plot.Right + 13, y + 4.5), new(narrow ? 12 : 13, palette.Ink, bold));
    }
}
