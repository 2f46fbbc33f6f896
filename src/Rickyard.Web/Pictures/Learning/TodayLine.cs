using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>The upright line of today, with its day where there is a head to write it on.</summary>
internal sealed class TodayLine(IDrawing drawing, Palette palette, LearningRun run)
{
    /// <summary>Size of its words. [px]</summary>
    public const double Letters = 12;

    /// <summary>Its words.</summary>
    public static string Words(LearningRun run) => $"today {LearningWords.ShortDay(run, run.Today)}";

    /// <summary>The room its words take at the head of a plot.</summary>
    public static Box Room(LearningRun run, Box plot, double x)
    {
        var width = TextMeasure.Room(Words(run), Letters, bold: true);
        return new(x + 5 + width > plot.Right ? x - 5 - width : x + 5, plot.Top + 3, width, Letters + 3);
    }

    /// <summary>Draws it.</summary>
    /// <param name="plot">The plot. [px]</param>
    /// <param name="x">Place of today. [px]</param>
    /// <param name="withWords">Whether the day is written beside its head.</param>
    public void Draw(Box plot, double x, bool withWords = true)
    {
        drawing.Begin("today");
        drawing.Line([new(x, plot.Top), new(x, plot.Bottom)], new(palette.Ink, 1.2, Blunt: true));
        if (withWords) drawing.Write(Words(run), new(Room(run, plot, x).Left, plot.Top + 3 + Letters), new(Letters, palette.Ink, Bold: true));
        drawing.End();
    }
}
