using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>
/// The picture of a forecast that has learnt: its answer in a sentence, the curves with every reading among them and the band before any reading, and the share of splits
/// in the cook's band. The same run and options give the same picture, byte for byte in SVG.
/// </summary>
public static class LearningPicture
{
    /// <summary>As a standalone SVG document that needs nothing from outside itself.</summary>
    public static string Svg(LearningRun run, PictureOptions? options = null)
    {
        var page = new LearningPage(run, options ?? new());
        var drawing = new SvgDrawing();
        var height = page.Draw(drawing);
        return drawing.Document(page.Width, height, page.Palette.Page, run.Case.Name, LearningWords.Description(run));
    }

    /// <summary>As a PNG image.</summary>
    public static byte[] Png(LearningRun run, PictureOptions? options = null)
    {
        var chosen = options ?? new();
        if (chosen.DotsPerPixel is not (>= 0.5 and <= 4))
            throw new ArgumentOutOfRangeException(nameof(options), chosen.DotsPerPixel, "Dots per pixel must be 0.5 to 4.");
        var page = new LearningPage(run, chosen);
        using var drawing = new SkiaDrawing(page.Width);
        var height = page.Draw(drawing);
        return drawing.Png(page.Width, height, page.Palette.Page, chosen.DotsPerPixel);
    }
}
