using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>The parts of the picture from top to bottom: answer, pull list, trade-off with its table, footnote.</summary>
internal sealed class SchedulePage(ScheduleAnswer answer, PictureOptions options)
{
    private const double PlotWidth = 560;
    private const double PlotHeight = 380;

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
        var top = DrawAnswer(drawing, Margin);
        top = new PullLanes(drawing, Palette, answer, options.Narrow).Draw(Content(top)) + (options.Narrow ? 30 : 36);
        top = options.Narrow ? DrawStacked(drawing, top) : DrawBeside(drawing, top);
        top = DrawText(drawing, Footnote(), top + 20, new(12, Palette.Muted), 17);
        return Math.Ceiling(top + Margin - 12);
    }

    private double DrawAnswer(IDrawing drawing, double top)
    {
        drawing.Begin("answer");
        if (BoxCautions.Override(answer.Run.Charge!.Plan) is { } words) top = DrawText(drawing, $"OVERRIDE. {words}", top, new(14, Palette.Accent, Bold: true), 20) + 8;
        top = DrawText(drawing, answer.Case.Name, top, new(15, Palette.Muted, Bold: true), 20);
        top = DrawText(drawing, Kept(ScheduleWords.Headline(answer)), top + 8, new(options.Narrow ? 20 : 26, Palette.Ink, Bold: true), options.Narrow ? 26 : 34);
        top = DrawText(drawing, Kept(ScheduleWords.Way(answer)), top + 6, new(options.Narrow ? 15 : 16, Palette.Ink), options.Narrow ? 21 : 23);
        if (answer.WasStopped) top = DrawText(drawing, "The search was stopped before its end: this is the best so far.", top + 6, new(14, Palette.Accent, Bold: true), 20);
        drawing.End();
        return top + (options.Narrow ? 20 : 26);
    }

    /// <summary>A number and its unit kept on one line.</summary>
    private static string Kept(string text) => text.Replace(" °C", "\u00a0°C", StringComparison.Ordinal).Replace(" %", "\u00a0%", StringComparison.Ordinal)
        .Replace(" points", "\u00a0points", StringComparison.Ordinal).Replace("day ", "day\u00a0", StringComparison.Ordinal);

    private double DrawStacked(IDrawing drawing, double top)
    {
        top = new TradeOffChart(drawing, Palette, answer, narrow: true).Draw(Content(top, 320)) + 22;
        return new TradeOffTable(drawing, Palette, answer, narrow: true).Draw(Content(top));
    }

    private double DrawBeside(IDrawing drawing, double top)
    {
        var all = Content(top, PlotHeight);
        var plot = new TradeOffChart(drawing, Palette, answer, narrow: false).Draw(all with { Width = PlotWidth });
        var table = new TradeOffTable(drawing, Palette, answer, narrow: false).Draw(new(all.Left + PlotWidth + 56, top, all.Width - PlotWidth - 56, 0));
        return Math.Max(plot, table);
    }

    private string Footnote()
    {
        var goal = answer.Request.Goal == ChargeGoal.Even ? "even: core, shell and mean near the band" : "usable now: the core in the band, the shell may be drier";
        return FormattableString.Invariant(
            $"Goal: {goal}. Masses and moistures are of the typical split of a class. {answer.Tried.Count} schedules tried. Model {answer.Run.ModelVersion}, seed\u00a0{answer.Run.Seed}. Follow the appliance's instructions, local codes and licensed practice.");
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
