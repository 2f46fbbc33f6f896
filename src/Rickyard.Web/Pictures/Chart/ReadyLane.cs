using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Chart;

/// <summary>
/// Above the plot: a bar from when half of the lot has come into the cook's band to when half has left it; thin lines hold the middle eight in ten
/// for its beginning, above the bar, and its end, below. What goes on beyond the run ends in an arrow.
/// </summary>
internal sealed class ReadyLane(IDrawing drawing, Palette palette, DryingCase drying, ReadyWindow window, double end, bool narrow)
{
    private const double Height = 14;

    /// <summary>Draws it.</summary>
    /// <param name="plot">The plot beneath. [px]</param>
    /// <param name="x">Place of a day. [px]</param>
    public void Draw(Box plot, Func<double, double> x)
    {
        if (window.From.Middle is not { } from) return;
        var y = plot.Top - Height;
        var until = window.Until.Middle ?? end;
        drawing.Begin("ready");
        drawing.Fill([new Box(x(from), plot.Top, x(until) - x(from), plot.Height).Corners], palette.Accent, 0.07);
        DrawSpread(window.From, x, y - 8);
        DrawSpread(window.Until, x, y + 8);
        drawing.Line([new(x(from), y), new(x(until), y)], new(palette.Accent, 6, Blunt: true));
        DrawWords(plot, x(from), x(until), y - 18);
        drawing.End();
    }

    private void DrawSpread(DaySpread spread, Func<double, double> x, double y)
    {
        if (spread.Early is not { } early) return;
        var late = spread.Late ?? end;
        drawing.Line([new(x(early), y), new(x(late), y)], new(palette.Accent, 1.5, Blunt: true));
        drawing.Line([new(x(early), y - 3), new(x(early), y + 3)], new(palette.Accent, 1.5, Blunt: true));
        drawing.Line(
            spread.Late is null ? [new(x(late) - 4, y - 3), new(x(late), y), new(x(late) - 4, y + 3)] : [new(x(late), y - 3), new(x(late), y + 3)],
            new(palette.Accent, 1.5, Blunt: true));
    }

    private void DrawWords(Box plot, double from, double until, double y)
    {
        var words = Words();
        var half = TextMeasure.Room(words, 13, bold: true) / 2;
        var middle = Math.Clamp((from + until) / 2, plot.Left + half, plot.Right + (narrow ? 50 : 60) - half);
        drawing.Write(words, new(middle, y), new(13, palette.Accent, Bold: true, Anchor.Middle));
    }

    private string Words()
    {
        string Date(double day) => drying.Start.IsDated ? CalendarWords.DayAndMonth(CalendarWords.After(drying.StartDate, day)) : FormattableString.Invariant($"day\u00a0{day:0.#}");
        return window.Until.Middle is { } until ? $"ready {Date(window.From.Middle!.Value)} to {Date(until)}" : $"ready from {Date(window.From.Middle!.Value)}";
    }
}
