using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Chart;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>The parts of the picture from top to bottom: answer, scale, cuts, curves, footnote.</summary>
internal sealed class RunPage(DryingRun run, PictureOptions options)
{
    /// <summary>Width of the page. [px]</summary>
    public double Width => options.Width;

    /// <summary>Its colours.</summary>
    public Palette Palette { get; } = options.Dark ? Palette.Dark : Palette.Light;

    private double Margin => options.Narrow ? 18 : 44;

    /// <summary>Draws it all.</summary>
    /// <returns>The height it took. [px]</returns>
    public double Draw(IDrawing drawing)
    {
        var top = DrawAnswer(drawing, Margin);
        top = new ScaleBar(drawing, Palette, run, options.Narrow).Draw(new Box(Margin, top, Width - 2 * Margin, 0));
        top = DrawCuts(drawing, top + (options.Narrow ? 22 : 26));
        top = DrawCurves(drawing, top + (options.Narrow ? 26 : 34));
        top = DrawBox(drawing, top);
        top = DrawText(drawing, RunWords.Footnote(run), top + 20, new(12, Palette.Muted), 17);
        return Math.Ceiling(top + Margin - 12);
    }

    private double DrawAnswer(IDrawing drawing, double top)
    {
        drawing.Begin("answer");
        if (run.Charge is { } charge && BoxCautions.Override(charge.Plan) is { } words) top = DrawText(drawing, $"OVERRIDE. {words}", top, new(14, Palette.Accent, Bold: true), 20) + 8;
        top = DrawText(drawing, run.Case.Name, top, new(15, Palette.Muted, Bold: true), 20);
        top = DrawText(drawing, RunWords.Answer(run), top + 8, new(options.Narrow ? 20 : 26, Palette.Ink, Bold: true), options.Narrow ? 26 : 34);
        top = DrawText(drawing, RunWords.Detail(run), top + 6, new(options.Narrow ? 15 : 16, Palette.Ink), options.Narrow ? 21 : 23);
        top = DrawText(drawing, RunWords.Subtitle(run), top + 4, new(options.Narrow ? 13 : 14, Palette.Muted), 20);
        drawing.End();
        return top + (options.Narrow ? 18 : 24);
    }

    private double DrawCuts(IDrawing drawing, double top) => options.Narrow
        ? new CutRows(drawing, Palette, run).Draw(new Box(Margin, top, Width - 2 * Margin, 0))
        : new CutTable(drawing, Palette, run).Draw(new Box(Margin, top, Width - 2 * Margin, 0));

    private double DrawCurves(IDrawing drawing, double top) =>
        new CurveChart(drawing, Palette, run, options.Narrow).Draw(new Box(Margin, top, Width - 2 * Margin, options.Narrow ? 330 : 400));

    private double DrawBox(IDrawing drawing, double top) => run.Charge is { } charge
        ? new BoxLanes(drawing, Palette, charge, run.Days, options.Narrow).Draw(new Box(Margin, top + 18, Width - 2 * Margin, 0))
        : top;

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
