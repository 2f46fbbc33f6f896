using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>The scale of moisture with its ticks and the cook's band.</summary>
internal sealed class ScaleBar(IDrawing drawing, Palette palette, DryingRun run, bool narrow)
{
    private const double Thickness = 16;
    private const int Steps = 96;

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("scale");
        var titleWidth = narrow ? 0 : CutTable.Gutter;
        var bar = new Box(box.Left + titleWidth, box.Top + (narrow ? 44 : 22), narrow ? box.Width : 560, Thickness);
        drawing.Write("Moisture, % dry basis", new(box.Left, narrow ? box.Top + 13 : bar.Top + 13), new(13, palette.Ink, Bold: true));
        drawing.Write("light is dry, dark is wet", new(narrow ? bar.Right : bar.Right + 16, narrow ? box.Top + 13 : bar.Top + 13), new(13, palette.Muted, Anchor: narrow ? Anchor.End : Anchor.Start));
        DrawRamp(bar);
        foreach (var tick in MoistureScale.Ticks.Where(tick => !IsNearBand(tick) && !IsNearEnd(bar, tick))) DrawTick(bar, tick);
        DrawBand(bar);
        drawing.End();
        return bar.Bottom + 20;
    }

    /// <summary>Whether a tick would stand in the way of the band's own label.</summary>
    private bool IsNearBand(double tick) =>
        MoistureScale.Place(tick) > MoistureScale.Place(run.Window.BandLow) - 0.06 && MoistureScale.Place(tick) < MoistureScale.Place(run.Window.BandHigh) + 0.06;

    /// <summary>Whether a tick would stand in the way of the label of the wet end.</summary>
    private static bool IsNearEnd(Box bar, double tick) => MoistureScale.Place(tick) is > 0.8 and < 1 and var place && (1 - place) * bar.Width < 46;

    private void DrawRamp(Box bar)
    {
        for (var step = 0; step < Steps; step++)
        {
            var left = bar.Left + bar.Width * step / Steps;
            drawing.Fill([new Box(left, bar.Top, bar.Right - left, bar.Height).Corners], MoistureScale.At((step + 0.5) / Steps).ToRgb());
        }

        drawing.Line(bar.Corners, new(palette.Outline, 1, Blunt: true), closed: true);
    }

    private void DrawTick(Box bar, double tick)
    {
        var place = MoistureScale.Place(tick);
        var x = bar.Left + bar.Width * place;
        var anchor = place <= 0 ? Anchor.Start : place >= 1 ? Anchor.End : Anchor.Middle;
        var words = FormattableString.Invariant($"{100 * tick:0}") + (place >= 1 ? "+" : "");
        drawing.Line([new(x, bar.Bottom), new(x, bar.Bottom + 4)], new(palette.Muted, 1, Blunt: true));
        drawing.Write(words, new(x, bar.Bottom + 17), new(12, palette.Muted, Anchor: anchor));
    }

    private void DrawBand(Box bar)
    {
        double low = bar.Left + bar.Width * MoistureScale.Place(run.Window.BandLow), high = bar.Left + bar.Width * MoistureScale.Place(run.Window.BandHigh);
        DrawEdge(bar, high, CutView.HighEdge(palette.Contour));
        DrawEdge(bar, low, CutView.LowEdge(palette.Contour));
        drawing.Line([new(low, bar.Top - 5), new(high, bar.Top - 5)], new(palette.Accent, 3, Blunt: true));
        drawing.Write($"your band {RunWords.Band(run)}: {RunWords.Edge(run.Window.BandHigh)} is a line, {RunWords.Edge(run.Window.BandLow)} is dashed",
            new(narrow ? bar.Left : low, bar.Top - 11), new(12, palette.Accent, Bold: true));
    }

    private void DrawEdge(Box bar, double x, Stroke stroke)
    {
        Point[] edge = [new(x, bar.Top), new(x, bar.Bottom)];
        drawing.Line(edge, new(palette.ContourCasing, stroke.Width + 1.6, Blunt: true));
        drawing.Line(edge, stroke with { Blunt = true });
    }
}
