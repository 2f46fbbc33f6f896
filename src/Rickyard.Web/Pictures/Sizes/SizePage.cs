using Rickyard.Core.Planning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>The parts of the chart: what it promises, where width is measured, the grid, and the small print.</summary>
internal sealed class SizePage(IDrawing drawing, SizeCalendar calendar)
{
    private const double Margin = 42, PieceRoom = 170, Foot = 74;

    /// <summary>Its colours; it is for print.</summary>
    public static Palette Palette => Palette.Light;

    private static double Inner => SizeChart.Width - 2 * Margin;

    public void Draw()
    {
        var top = DrawHead();
        DrawPiece();
        new SizeGrid(drawing, Palette, calendar).Draw(new(Margin, top + 10, Inner, SizeChart.Height - Margin - Foot - top - 10));
        drawing.Begin("small-print");
        DrawText(SizeWords.Footnote(calendar), SizeChart.Height - Margin - Foot + 8, new(11.5, Palette.Muted), 16, Inner);
        drawing.End();
    }

    private double DrawHead()
    {
        drawing.Begin("promise");
        var width = Inner - PieceRoom;
        var top = DrawText(calendar.Case.Name, Margin - 10, new(12, Palette.Muted, Bold: true), 17, width);
        top = DrawText(SizeWords.Title(calendar), top, new(27, Palette.Ink, Bold: true), 35, width);
        top = DrawText(SizeWords.Promise(calendar), top, new(15, Palette.Ink), 21, width);
        top = DrawText($"{SizeWords.Place(calendar)} {SizeWords.Wood(calendar)}", top + 1, new(12.5, Palette.Muted), 18, width);
        drawing.End();
        return top;
    }

    /// <summary>The end grain with its width marked, at the upper right.</summary>
    private void DrawPiece()
    {
        var grain = EndGrain.Of(calendar.Case.Split);
        var box = Box.Round(grain.Outline);
        var scale = Math.Min(92 / box.Width, 76 / box.Height);
        var centre = new Point(SizeChart.Width - Margin - PieceRoom / 2 + 10, Margin + 34);
        drawing.Begin("piece");
        drawing.Fill([grain.At(centre, scale)], SizeGrid.Tone(0.45));
        drawing.Line(grain.At(centre, scale), new(Palette.Outline, 1.5), closed: true);
        DrawWidth(EndGrain.Placed(grain.From, centre, scale), EndGrain.Placed(grain.To, centre, scale), centre);
        drawing.Write("width", new(centre.X, Margin + 34 + box.Height * scale / 2 + 20), new(12, Palette.Accent, Bold: true, Anchor.Middle));
        drawing.End();
    }

    /// <summary>A measuring line beside the wood, with ticks at its ends.</summary>
    private void DrawWidth(Point from, Point to, Point centre)
    {
        var length = Math.Sqrt((to.X - from.X) * (to.X - from.X) + (to.Y - from.Y) * (to.Y - from.Y));
        double acrossX = -(to.Y - from.Y) / length, acrossY = (to.X - from.X) / length;
        var side = ((from.X + to.X) / 2 - centre.X) * acrossX + ((from.Y + to.Y) / 2 - centre.Y) * acrossY < 0 ? -9 : 9;
        Point Beside(Point point, double distance) => new(point.X + acrossX * distance, point.Y + acrossY * distance);
        var stroke = new Stroke(Palette.Accent, 1.8, Blunt: true);
        drawing.Line([Beside(from, side), Beside(to, side)], stroke);
        foreach (var end in new[] { from, to }) drawing.Line([Beside(end, side - 5), Beside(end, side + 5)], stroke);
    }

    private double DrawText(string text, double top, TextStyle style, double lineHeight, double width)
    {
        foreach (var line in TextMeasure.Wrap(text, width, style.Size, style.Bold))
        {
            drawing.Write(line, new(Margin, top + style.Size), style);
            top += lineHeight;
        }

        return top;
    }
}
