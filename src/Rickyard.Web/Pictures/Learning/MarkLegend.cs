using Rickyard.Core.Learning;
using Rickyard.Core.Measuring;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>What each mark that is drawn means, in lines under the curves.</summary>
internal sealed class MarkLegend(IDrawing drawing, Palette palette, LearningRun run, LearningPlace place)
{
    private const double Letters = 12;
    private const double LineHeight = 21;
    private const double MarkRoom = 14;
    private const double Gap = 20;

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        var marks = ReadingMark.Of(run);
        var drawer = new MarkDrawer(drawing, palette);
        double left = box.Left + (place.Narrow ? 8 : place.Left), x = left, y = box.Top + 12;
        drawing.Begin("legend");
        foreach (var (words, draw) in Entries(marks, drawer))
        {
            var width = MarkRoom + TextMeasure.Room(words, Letters);
            if (x > left && x + width > box.Right) (x, y) = (left, y + LineHeight);
            draw(new(x, y));
            drawing.Write(words, new(x + MarkRoom, y + 4), new(Letters, palette.Muted));
            x += width + Gap;
        }

        drawing.End();
        return y + 8;
    }

    private static IEnumerable<(string Words, Action<Point> Draw)> Entries(IReadOnlyList<ReadingMark> marks, MarkDrawer drawer)
    {
        foreach (var shape in marks.Select(mark => mark.Shape).Distinct().Order()) yield return (Words(shape), at => drawer.Draw(shape, shape == MarkShape.Tick ? at with { Y = at.Y + 5 } : at));
        if (marks.Any(mark => mark.Verdict == MeterVerdict.AtLeast)) yield return ("at least this wet", at => drawer.DrawBar(at with { Y = at.Y + 8 }, 0, 0, MeterVerdict.AtLeast));
        if (marks.Any(mark => mark.Verdict == MeterVerdict.AtMost)) yield return ("at most this wet", at => drawer.DrawBar(at with { Y = at.Y - 8 }, 0, 0, MeterVerdict.AtMost));
        if (marks.Any(mark => mark.Fit.IsSuspect)) yield return ("can hardly be right", drawer.Cross);
    }

    private static string Words(MarkShape shape) => shape switch
    {
        MarkShape.Core => "pins in a fresh core",
        MarkShape.Face => "pins in a split face",
        MarkShape.Side => "pins in the side",
        MarkShape.End => "pins in end grain",
        MarkShape.Oven => "oven",
        MarkShape.Mass => "weighing",
        MarkShape.Promise => "promised",
        _ => "sign or dry mass",
    };
}
