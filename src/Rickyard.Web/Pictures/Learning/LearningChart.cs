using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Chart;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;
using Curve = Rickyard.Web.Pictures.Chart.Curve;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>
/// Moisture against the calendar: the core with its band before and after the readings, whole piece and shell, marked splits as thin lines, the readings at their days, the
/// cook's band as a stripe, and today as a line.
/// </summary>
internal sealed class LearningChart(IDrawing drawing, Palette palette, LearningRun run, LearningPlace place)
{
    private const double Thinning = 0.1;
    private const int MostNamed = 4;

    private static readonly double[] Steps = [0.05, 0.1, 0.2, 0.5, 1];

    private readonly IReadOnlyList<ReadingMark> _marks = ReadingMark.Of(run);
    private Box _plot;
    private double _top;

    /// <summary>Draws it into a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        _plot = place.Plot(box, run.Window.From.Middle is null ? 46 : place.Narrow ? 84 : 76, 40);
        _top = Math.Max(0.28, 1.06 * Highest());
        drawing.Begin("curves");
        drawing.Write("Inside, through time", new(box.Left, box.Top + 13), new(13, palette.Ink, Bold: true));
        drawing.Write("moisture, % dry basis", new(box.Left, box.Top + 31), new(13, palette.Muted));
        DrawAxes();
        DrawBand(box);
        new ReadyLane(drawing, palette, run.Case, run.Window, run.Days[^1], place.Narrow).Draw(_plot, X);
        DrawSpreads();
        DrawCurves();
        new TodayLine(drawing, palette, run).Draw(_plot, X(run.Today));
        new ReadingMarks(drawing, palette, run, _marks).Draw(_plot, X, Y);
        drawing.End();
        return box.Bottom;
    }

    private double Highest() => run.HighTenth.Core.Concat(run.CoreBefore.Select(spread => spread.High))
        .Concat(_marks.Where(mark => mark.Moisture is not null).Select(mark => mark.Moisture!.Value)).Max();

    private double X(double day) => place.X(_plot, day);

    private double Y(double moisture) => _plot.Bottom - _plot.Height * Math.Clamp(moisture / _top, 0, 1);

    private double BandLabel => (Y(run.Window.BandLow) + Y(run.Window.BandHigh)) / 2;

    private void DrawAxes()
    {
        var step = Steps.First(step => _top / step < 11);
        for (var level = 0.0; level <= _top; level += step) DrawLevel(level);
        foreach (var tick in TimeAxis.Ticks(run.Case.Start, run.Days[^1], place.MostTicks)) DrawTime(tick);
    }

    private void DrawLevel(double level)
    {
        drawing.Line([new(_plot.Left, Y(level)), new(_plot.Right, Y(level))], new(palette.Hairline, 1, Blunt: true));
        if (Math.Abs(Y(level) - BandLabel) < 16) return;
        drawing.Write(FormattableString.Invariant($"{100 * level:0}"), new(_plot.Left - 8, Y(level) + 4), new(12, palette.Muted, Anchor: Anchor.End));
    }

    private void DrawTime(TimeTick tick)
    {
        var x = X(tick.Day);
        drawing.Line([new(x, _plot.Bottom), new(x, _plot.Bottom + 5)], new(palette.Muted, 1, Blunt: true));
        drawing.Write(tick.Label, new(x, _plot.Bottom + 20), new(12, palette.Muted, Anchor: Anchor.Middle));
        if (tick.Year is { } year) drawing.Write(year, new(x, _plot.Bottom + 36), new(12, palette.Muted, Anchor: Anchor.Middle));
    }

    private void DrawBand(Box box)
    {
        double high = Y(run.Window.BandHigh), low = Y(run.Window.BandLow);
        drawing.Begin("band");
        drawing.Fill([new Box(_plot.Left, high, _plot.Width, low - high).Corners], palette.Accent, 0.2);
        drawing.Line([new(_plot.Left, high), new(_plot.Right, high)], CutView.HighEdge(palette.Accent) with { Width = 1 });
        drawing.Line([new(_plot.Left, low), new(_plot.Right, low)], CutView.LowEdge(palette.Accent) with { Width = 1 });
        drawing.End();
        var words = (place.Narrow ? "" : "your band ") + LearningWords.Band(run);
        drawing.Write(words, new(Math.Max(box.Left + TextMeasure.Room(words, 13, bold: true), _plot.Left - 8), BandLabel + 4.5), new(13, palette.Accent, Bold: true, Anchor.End));
    }

    private void DrawSpreads()
    {
        drawing.Begin("before");
        foreach (var edge in new Func<Spread, double>[] { spread => spread.High, spread => spread.Low }) DrawLine([.. run.CoreBefore.Select(edge)], new(palette.Muted, 1.4, Dash.Dots));
        drawing.End();
        drawing.Begin("spread");
        DrawShade(run.HighTenth.Core, run.LowTenth.Core, 0.2);
        if (run.Case.Pieces > 1) DrawShade([.. run.LotCore.Select(spread => spread.High)], [.. run.LotCore.Select(spread => spread.Low)], 0.25);
        drawing.End();
    }

    private void DrawLine(double[] values, Stroke stroke) => drawing.Line(Outline.Thinned([.. Points(values)], Thinning), stroke);

    private void DrawShade(double[] high, double[] low, double opacity) => drawing.Fill([Outline.Thinned([.. Points(high), .. Points(low).Reverse()], Thinning)], palette.Shade, opacity);

    private IEnumerable<Point> Points(double[] values) => run.Days.Select((day, i) => new Point(X(day), Y(values[i])));

    private void DrawCurves()
    {
        var pieces = run.Pieces.Select(piece => new Curve(piece.Piece, piece.Median.Core, new(palette.Shade, 1))).ToList();
        Curve[] curves = [new("core", run.Median.Core, new(palette.Ink, 2.8)), new("whole", run.Median.Mean, new(palette.Ink, 1.3)), new("shell", run.Median.Shell, new(palette.Muted, 1.3))];
        foreach (var curve in pieces.Concat(curves.Reverse())) DrawCurve(curve, pieces.Contains(curve) ? "piece" : curve.Name);
        DrawNames([.. curves, .. pieces.Take(MostNamed).Select(piece => piece with { Name = NameOf(piece) })]);
    }

    private void DrawCurve(Curve curve, string part)
    {
        var (past, future) = place.Split(_plot, curve.Values, Y);
        drawing.Begin(part);
        drawing.Line(Outline.Thinned(past, Thinning), curve.Stroke);
        drawing.Line(Outline.Thinned(future, Thinning), curve.Stroke with { Dash = curve.Stroke.Width > 2 ? Dash.Long : Dash.Short, Blunt = true });
        drawing.End();
    }

    private void DrawNames(IReadOnlyList<Curve> curves)
    {
        var places = Labels.Spread([.. curves.Select(curve => Y(curve.Values[^1]))], 16, _plot.Bottom);
        for (var i = 0; i < curves.Count; i++) DrawName(curves[i], places[i], i == 0);
    }

    private void DrawName(Curve curve, double y, bool bold)
    {
        var end = Y(curve.Values[^1]);
        var words = $"{curve.Name} {RunWords.Percent(curve.Values[^1])}";
        drawing.Line([new(_plot.Right + 3, end), new(_plot.Right + 9, y)], new(palette.Muted, 0.8));
        drawing.Write(words, new(_plot.Right + 12, y + 4.5), new(12, palette.Ink, bold));
    }

    private string NameOf(Curve piece) => (place.Narrow ? "" : "split ") + (piece.Name.Length <= 5 ? piece.Name : piece.Name[..4] + "…") + ":";
}
