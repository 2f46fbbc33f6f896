using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>
/// The picture of a run: its answer in a sentence, the typical split cut open at several days and coloured by moisture, and the curves. The same
/// run and options give the same picture, byte for byte in SVG.
/// </summary>
public static class RunPicture
{
    /// <summary>As a standalone SVG document that needs nothing from outside itself.</summary>
    public static string Svg(DryingRun run, PictureOptions? options = null)
    {
        var page = new RunPage(run, options ?? new());
        var drawing = new SvgDrawing();
        var height = page.Draw(drawing);
        return drawing.Document(page.Width, height, page.Palette.Page, run.Case.Name, RunWords.Description(run));
    }

    /// <summary>As a PNG image.</summary>
    public static byte[] Png(DryingRun run, PictureOptions? options = null)
    {
        var chosen = options ?? new();
        if (chosen.DotsPerPixel is not (>= 0.5 and <= 4))
            throw new ArgumentOutOfRangeException(nameof(options), chosen.DotsPerPixel, "Dots per pixel must be 0.5 to 4.");
        var page = new RunPage(run, chosen);
        using var drawing = new SkiaDrawing(page.Width);
        var height = page.Draw(drawing);
        return drawing.Png(page.Width, height, page.Palette.Page, chosen.DotsPerPixel);
    }
}
