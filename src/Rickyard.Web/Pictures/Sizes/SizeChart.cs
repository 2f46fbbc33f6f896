using Rickyard.Core.Planning;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>
/// The chart to hang at the rack: a line for each month of stacking, a column for each span until the wood is needed, and in each cell the widest split that is ready by
/// then. A4 on its side, on white, told apart by figures and drawn sizes and not by colour alone.
/// </summary>
public static class SizeChart
{
    /// <summary>Width, of A4 at 96 to the inch. [px]</summary>
    public const double Width = 1123;

    /// <summary>Height. [px]</summary>
    public const double Height = 794;

    /// <summary>As a standalone SVG document that needs nothing from outside itself.</summary>
    public static string Svg(SizeCalendar calendar)
    {
        var drawing = new SvgDrawing();
        new SizePage(drawing, calendar).Draw();
        return drawing.Document(Width, Height, SizePage.Palette.Page, SizeWords.Title(calendar), SizeWords.Description(calendar));
    }

    /// <summary>As a PNG image.</summary>
    /// <param name="calendar">What to draw.</param>
    /// <param name="dotsPerPixel">Dots for each pixel of the drawing; 2 is sharp in print.</param>
    public static byte[] Png(SizeCalendar calendar, double dotsPerPixel = 2)
    {
        using var drawing = new SkiaDrawing(Width);
        new SizePage(drawing, calendar).Draw();
        return drawing.Png(Width, Height, SizePage.Palette.Page, dotsPerPixel);
    }
}
