using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>The parts of the picture from top to bottom: answer, curves with readings, what the marks mean, share in the band, footnote.</summary>
internal sealed class LearningPage(LearningRun run, PictureOptions options)
{
    /// <summary>Width of the page. [px]</summary>
    public double Width => options.Width;

    /// <summary>Its colours.</summary>
    public Palette Palette { get; } = options.Dark ? Palette.Dark : Palette.Light;

    private double Margin => options.Narrow ? 18 : 44;

    private Box Content(double top, double height = 0) => new(Margin, top, Width - 2 * Margin, height);

    /// <summary>Draws it all.</summary>
    /// <returns>The height it took. [px]</returns>
    public double Draw(IDrawing drawing)
    {
        var place = new LearningPlace(run, options.Narrow);
        var top = DrawAnswer(drawing, Margin);
        top = new LearningChart(drawing, Palette, run, place).Draw(Content(top, options.Narrow ? 380 : 470)) + 8;
        top = new MarkLegend(drawing, Palette, run, place).Draw(Content(top)) + (options.Narrow ? 18 : 22);
        if (run.Case.Pieces > 1) top = new ShareChart(drawing, Palette, run, place).Draw(Content(top, options.Narrow ? 170 : 190)) + 8;
        top = DrawText(drawing, LearningWords.Footnote(run), top + 12, new(12, Palette.Muted), 17);
        return Math.Ceiling(top + Margin - 12);
    }

    private double DrawAnswer(IDrawing drawing, double top)
    {
        drawing.Begin("answer");
        top = DrawText(drawing, run.Case.Name, top, new(15, Palette.Muted, Bold: true), 20);
        top = DrawText(drawing, LearningWords.Answer(run), top + 8, new(options.Narrow ? 20 : 26, Palette.Ink, Bold: true), options.Narrow ? 26 : 34);
        top = DrawText(drawing, LearningWords.Change(run), top + 6, new(options.Narrow ? 15 : 16, Palette.Ink), options.Narrow ? 21 : 23);
        top = DrawText(drawing, LearningWords.Today(run), top + 4, new(options.Narrow ? 13 : 14, Palette.Muted), 20);
        drawing.End();
        return top + (options.Narrow ? 16 : 22);
    }

    private double DrawText(IDrawing drawing, string text, double top, TextStyle style, double lineHeight)
    {
        foreach (var line in TextMeasure.Wrap(text, Width - 2 * Margin, style.Size, style.Bold))
        {
            drawing.Write(line, new(Margin, top + style.Size), style);
            top += lineHeight;
        }

        return top;
    }
}
