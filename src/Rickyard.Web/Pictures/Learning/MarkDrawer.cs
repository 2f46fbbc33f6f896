using Rickyard.Core.Measuring;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>Draws the marks of readings.</summary>
internal sealed class MarkDrawer(IDrawing drawing, Palette palette)
{
    /// <summary>Half the size of a mark. [px]</summary>
    public const double Size = 4.6;

    private const double Arrow = 17;

    /// <summary>One mark.</summary>
    public void Draw(MarkShape shape, Point at)
    {
        var outline = OutlineOf(shape, at);
        if (shape == MarkShape.Tick)
        {
            drawing.Line(outline, new(palette.Ink, 2, Blunt: true));
            return;
        }

        var isFull = shape is MarkShape.Core or MarkShape.Oven or MarkShape.Mass;
        drawing.Fill([outline], isFull ? palette.Ink : palette.Page);
        drawing.Line(outline, new(isFull ? palette.Page : palette.Ink, isFull ? 1 : 1.7), closed: true);
    }

    /// <summary>The bar of a value, or the arrow of a bound.</summary>
    /// <param name="at">The mark.</param>
    /// <param name="head">Upper end of the bar. [px]</param>
    /// <param name="foot">Lower end. [px]</param>
    /// <param name="verdict">A value, or a bound.</param>
    public void DrawBar(Point at, double head, double foot, MeterVerdict verdict)
    {
        if (verdict == MeterVerdict.Measured) DrawSpan(at.X, head, foot);
        else DrawArrow(at, verdict == MeterVerdict.AtLeast ? -1 : 1);
    }

    /// <summary>The cross over a reading that can hardly be right.</summary>
    public void Cross(Point at)
    {
        const double Reach = 8.5;
        foreach (var turn in new[] { -1, 1 })
            drawing.Line([new(at.X - Reach, at.Y - turn * Reach), new(at.X + Reach, at.Y + turn * Reach)], new(palette.Accent, 2.2));
    }

    private void DrawSpan(double x, double head, double foot)
    {
        if (foot - head < 2 * Size) return;
        drawing.Line([new(x, head), new(x, foot)], new(palette.Ink, 1.2, Blunt: true));
        foreach (var end in new[] { head, foot }) drawing.Line([new(x - 3, end), new(x + 3, end)], new(palette.Ink, 1.2, Blunt: true));
    }

    private void DrawArrow(Point at, int way)
    {
        var tip = at.Y + way * Arrow;
        drawing.Line([at, new(at.X, tip)], new(palette.Ink, 1.6, Blunt: true));
        drawing.Line([new(at.X - 4, tip - way * 5), new(at.X, tip), new(at.X + 4, tip - way * 5)], new(palette.Ink, 1.6));
    }

    private static Point[] OutlineOf(MarkShape shape, Point at) => shape switch
    {
        MarkShape.Core => Around(at, 20, Size, 0),
        MarkShape.Promise => Around(at, 20, Size + 1, 0),
        MarkShape.Face => Around(at, 4, Size + 1.6, 0),
        MarkShape.End or MarkShape.Oven => Around(at, 4, Size + 1.2, 0.5),
        MarkShape.Side or MarkShape.Mass => Around(at, 3, Size + 1.8, 0),
        _ => [new(at.X, at.Y - 9), at],
    };

    /// <summary>Corners of an even polygon that stands on a corner turned by a part of a step from the top.</summary>
    private static Point[] Around(Point at, int corners, double radius, double turned) => [.. Enumerable.Range(0, corners)
        .Select(corner => 2 * Math.PI * (corner + turned) / corners)
        .Select(turn => new Point(at.X + radius * Math.Sin(turn), at.Y - radius * Math.Cos(turn)))];
}
