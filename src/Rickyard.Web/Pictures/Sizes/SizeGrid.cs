using System.Globalization;
using Rickyard.Core.Planning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>The cells: month of stacking downward, span until needed rightward; in each the width, the piece drawn to one scale, and the day.</summary>
internal sealed class SizeGrid(IDrawing drawing, Palette palette, SizeCalendar calendar)
{
    private const double Gutter = 108, Head = 44, Glyph = 34, Gap = 3;

    private readonly EndGrain _grain = EndGrain.Of(SplitWidth.Resized(calendar.Case.Split, 1));

    private readonly double _widest = calendar.Widths.SelectMany(row => row).Max() ?? SizeSteps.Largest;

    /// <summary>Ground of a cell: paler for smaller splits, never so dark that ink on it is hard to read.</summary>
    /// <param name="share">Of the widest in the chart, 0 to 1.</param>
    public static Rgb Tone(double share) => new OkLch(0.98 - 0.20 * share, 0.01 + 0.06 * share, 82).ToRgb();

    /// <summary>Draws them into a box.</summary>
    public void Draw(Box box)
    {
        drawing.Begin("grid");
        double width = (box.Width - Gutter) / calendar.Request.Spans.Count, height = (box.Height - Head) / calendar.Starts.Count;
        drawing.Write("Stacked on", new(box.Left, box.Top + 32), new(13, palette.Muted));
        for (var column = 0; column < calendar.Request.Spans.Count; column++) DrawHead(calendar.Request.Spans[column], box.Left + Gutter + column * width, box.Top);
        for (var row = 0; row < calendar.Starts.Count; row++)
        {
            var top = box.Top + Head + row * height;
            drawing.Write(calendar.Starts[row].ToString("d MMMM", CultureInfo.InvariantCulture), new(box.Left, top + height / 2 + 4), new(14.5, palette.Ink, Bold: true));
            for (var column = 0; column < calendar.Request.Spans.Count; column++)
                DrawCell(row, column, new(box.Left + Gutter + column * width, top, width - Gap, height - Gap));
        }

        drawing.End();
    }

    private void DrawHead(int months, double left, double top)
    {
        drawing.Write(Invariant($"{months} months"), new(left + 8, top + 18), new(15, palette.Ink, Bold: true));
        drawing.Write("until needed", new(left + 8, top + 34), new(12, palette.Muted));
    }

    private void DrawCell(int row, int column, Box cell)
    {
        drawing.Begin("cell");
        var width = calendar.Widths[row][column];
        drawing.Fill([cell.Corners], Tone((width ?? 0) / _widest));
        if (width is { } known) DrawPiece(known, cell);
        DrawWidth(width, new(cell.Left + Glyph + 2, cell.Top + cell.Height / 2 + 1), cell.Right - 5);
        drawing.Write(SizeWords.By(calendar.Starts[row], calendar.Request.Spans[column]), new(cell.Left + Glyph + 2, cell.Bottom - 4), new(10, palette.Ink));
        drawing.End();
    }

    /// <summary>The piece, all to one scale: the widest of the chart just fits the height of a cell, or its room where it is broader than high.</summary>
    private void DrawPiece(double width, Box cell)
    {
        var unit = Box.Round(_grain.Outline);
        var scale = Math.Min((cell.Height - 4) / unit.Height, (Glyph - 4) / unit.Width) / _widest * width;
        var outline = _grain.At(new(cell.Left + Glyph / 2, cell.Top + cell.Height / 2), scale);
        drawing.Fill([outline], palette.Bark, 0.75);
    }

    private void DrawWidth(double? width, Point at, double right)
    {
        if (width is not { } known)
        {
            drawing.Write(Invariant($"not even {100 * SizeSteps.Smallest:0} cm"), at, new(12, palette.Muted));
            return;
        }

        var centimetres = WidthWords.Centimetres(known) + (SizeWords.IsLargest(known) ? "+" : "");
        drawing.Write(centimetres, at, new(15.5, palette.Ink, Bold: true));
        drawing.Write(WidthWords.Inches(known), at with { X = right }, new(12, palette.Ink, Anchor: Anchor.End));
    }
}
