using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>
/// The picture of a schedule: its answer in a sentence, days against energy with the gap as the size of a circle, and the pull list. The same answer and options give
/// the same picture, byte for byte in SVG.
/// </summary>
public static class SchedulePicture
{
    /// <summary>As a standalone SVG document that needs nothing from outside itself.</summary>
    public static string Svg(ScheduleAnswer answer, PictureOptions? options = null)
    {
        var page = new SchedulePage(answer, options ?? new());
        var drawing = new SvgDrawing();
        var height = page.Draw(drawing);
        return drawing.Document(page.Width, height, page.Palette.Page, answer.Case.Name, ScheduleWords.Description(answer));
    }

    /// <summary>As a PNG image.</summary>
    public static byte[] Png(ScheduleAnswer answer, PictureOptions? options = null)
    {
        var chosen = options ?? new();
        if (chosen.DotsPerPixel is not (>= 0.5 and <= 4))
            throw new ArgumentOutOfRangeException(nameof(options), chosen.DotsPerPixel, "Dots per pixel must be 0.5 to 4.");
        var page = new SchedulePage(answer, chosen);
        using var drawing = new SkiaDrawing(page.Width);
        var height = page.Draw(drawing);
        return drawing.Png(page.Width, height, page.Palette.Page, chosen.DotsPerPixel);
    }
}
