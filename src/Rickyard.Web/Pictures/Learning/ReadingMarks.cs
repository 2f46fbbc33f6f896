using Rickyard.Core.Learning;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>The readings among the curves: marks with their bars, those of one day beside one another, and those that can hardly be right crossed and named by their line.</summary>
internal sealed class ReadingMarks(IDrawing drawing, Palette palette, LearningRun run, IReadOnlyList<ReadingMark> marks)
{
    private const double Step = 8;
    private const double Letters = 12;

    private readonly MarkDrawer _drawer = new(drawing, palette);

    /// <summary>Draws them.</summary>
    /// <param name="plot">The plot. [px]</param>
    /// <param name="x">Place of a day. [px]</param>
    /// <param name="y">Place of a moisture. [px]</param>
    public void Draw(Box plot, Func<double, double> x, Func<double, double> y)
    {
        var places = Places(plot, x, y);
        for (var i = 0; i < marks.Count; i++) DrawMark(marks[i], places[i], y);
        var taken = new List<Box>([TodayLine.Room(run, plot, x(run.Today)), .. places.Select(Round)]);
        for (var i = 0; i < marks.Count; i++)
            if (marks[i].Fit.IsSuspect) DrawSuspect(marks[i], places[i], plot, taken);
    }

    private Point[] Places(Box plot, Func<double, double> x, Func<double, double> y)
    {
        var places = new Point[marks.Count];
        foreach (var day in Enumerable.Range(0, marks.Count).GroupBy(i => Math.Round(x(marks[i].Fit.Observation.From.Day) / Step)))
            foreach (var (i, order) in day.Select((i, order) => (i, order)))
            {
                var beside = x(marks[i].Fit.Observation.From.Day) + Step * (order - (day.Count() - 1) / 2.0);
                places[i] = new(Math.Clamp(beside, plot.Left + Step, plot.Right - Step), marks[i].Moisture is { } moisture ? y(moisture) : plot.Bottom);
            }

        return places;
    }

    private void DrawMark(ReadingMark mark, Point at, Func<double, double> y)
    {
        drawing.Begin("reading");
        if (mark.Moisture is not null) _drawer.DrawBar(at, y(mark.High), y(mark.Low), mark.Verdict);
        _drawer.Draw(mark.Shape, at);
        drawing.End();
    }

    private void DrawSuspect(ReadingMark mark, Point at, Box plot, List<Box> taken)
    {
        var words = Invariant($"line {mark.Fit.Observation.From.Row}?");
        var room = Free(words, at, plot, taken);
        taken.Add(room);
        drawing.Begin("suspect");
        _drawer.Cross(at);
        drawing.Write(words, new(room.Left, room.Top + Letters), new(Letters, palette.Accent, Bold: true));
        drawing.End();
    }

    private static Box Round(Point at) => new(at.X - MarkDrawer.Size, at.Y - MarkDrawer.Size, 2 * MarkDrawer.Size, 2 * MarkDrawer.Size);

    /// <summary>The first room beside, above or below the mark that nothing has taken; the first of all where none is free.</summary>
    private static Box Free(string words, Point at, Box plot, List<Box> taken)
    {
        double width = TextMeasure.Room(words, Letters, bold: true), height = Letters + 3;
        Box[] rooms =
        [
            .. new[] { 0, -18, 18, -34, 34 }.SelectMany(lift => new Box[] { new(at.X + 12, at.Y - height / 2 + lift, width, height), new(at.X - 12 - width, at.Y - height / 2 + lift, width, height) }),
        ];
        var inside = rooms.Where(room => room.Left >= plot.Left && room.Right <= plot.Right && room.Top >= plot.Top && room.Bottom <= plot.Bottom).DefaultIfEmpty(rooms[0]).ToList();
        return inside.FirstOrDefault(room => !taken.Any(other => Meet(room, other)), inside[0]);
    }

    private static bool Meet(Box one, Box other) => one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;
}
