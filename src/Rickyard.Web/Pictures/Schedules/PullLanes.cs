using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Chart;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>The pull list: for each class how long it dries and rests, what a split weighs when it is to be pulled, and its moistures then and at the end.</summary>
internal sealed class PullLanes(IDrawing drawing, Palette palette, ScheduleAnswer answer, bool narrow)
{
    private const double BarHeight = 12;

    private readonly EvenAxis _days = EvenAxis.Over([0, Math.Max(0.1, answer.Best.Days)], narrow ? 6 : 9) with { From = 0 };

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("pulls");
        drawing.Write("When to pull what", new(box.Left, box.Top + 14), new(15, palette.Ink, Bold: true));
        drawing.Write(narrow ? "by the mass of a marked split of each class" : "by the mass of a marked split of each class: the mean goes by its mass, the core does not show", narrow ? new(box.Left, box.Top + 33) : new(box.Left + 172, box.Top + 14), new(13, palette.Muted));
        var lane = narrow ? new Box(box.Left + 4, box.Top, box.Width - 14, 0) : new Box(box.Left + 172, box.Top, 400, 0);
        var top = DrawDays(lane, box.Top + (narrow ? 60 : 46));
        foreach (var pull in answer.Best.Classes.OrderBy(pull => pull.PullDay ?? double.MaxValue)) top = narrow ? DrawBlock(pull, box, lane, top) : DrawRow(pull, box, lane, top);
        drawing.End();
        return top;
    }

    private double X(Box lane, double day) => lane.Left + lane.Width * _days.Place(day);

    private double DrawDays(Box lane, double y)
    {
        foreach (var tick in _days.Ticks) drawing.Write((tick > 0 || narrow ? "" : "day ") + _days.Write(tick), new(X(lane, tick), y), new(12, palette.Muted, Anchor: Anchor.Middle));
        if (!narrow) DrawHeads(lane.Right, y);
        return y + 10;
    }

    private void DrawHeads(double left, double y)
    {
        drawing.Write("pull a split at", new(left + 32, y), new(12, palette.Muted));
        drawing.Write("mean / core / shell then", new(left + 204, y), new(12, palette.Muted));
        drawing.Write("in the end", new(left + 380, y), new(12, palette.Muted));
    }

    private double DrawRow(ClassPull pull, Box box, Box lane, double top)
    {
        const double Height = 62;
        var one = ScheduleWords.ClassOf(answer, pull);
        drawing.Line([new(box.Left, top), new(box.Right, top)], new(palette.Hairline, 1, Blunt: true));
        drawing.Write(Fit(one.Name, 160, 15, bold: true), new(box.Left, top + 26), new(15, palette.Ink, Bold: true));
        drawing.Write(Invariant($"{one.Pieces} pieces"), new(box.Left, top + 46), new(13, palette.Muted));
        DrawLane(pull, lane, top + 18);
        DrawMasses(pull, one.Pieces, lane.Right + 32, top);
        drawing.Write(AtPull(pull), new(lane.Right + 204, top + 26), new(14, palette.Ink));
        drawing.Write(ScheduleWords.Three(pull.Mean, pull.Core, pull.Shell), new(lane.Right + 380, top + 26), new(14, palette.Ink));
        return top + Height;
    }

    private void DrawMasses(ClassPull pull, int pieces, double left, double top)
    {
        if (pull.PullDay is null)
        {
            drawing.Write("not in time", new(left, top + 26), new(15, palette.Accent, Bold: true));
            return;
        }

        drawing.Write(Invariant($"{pull.MassAtPull:0.00} kg"), new(left, top + 26), new(17, palette.Accent, Bold: true));
        drawing.Write(Invariant($"loaded {pull.MassAtLoading:0.00}; all {pieces * pull.MassAtPull:0.0} kg"), new(left, top + 46), new(12, palette.Muted));
    }

    private double DrawBlock(ClassPull pull, Box box, Box lane, double top)
    {
        var one = ScheduleWords.ClassOf(answer, pull);
        drawing.Line([new(box.Left, top), new(box.Right, top)], new(palette.Hairline, 1, Blunt: true));
        drawing.Write(Fit(Invariant($"{one.Name}, {one.Pieces} pieces"), 0.58 * box.Width, 14, bold: true), new(box.Left, top + 22), new(14, palette.Ink, Bold: true));
        var words = pull.PullDay is null ? "not in time" : Invariant($"pull at {pull.MassAtPull:0.00} kg");
        drawing.Write(words, new(box.Right, top + 22), new(14, palette.Accent, Bold: true, Anchor.End));
        DrawLane(pull, lane, top + 34);
        var y = top + 80;
        if (pull.PullDay is not null) drawing.Write(Invariant($"loaded at {pull.MassAtLoading:0.00} kg; all pulled {one.Pieces * pull.MassAtPull:0.0} kg"), new(box.Left, y), new(12, palette.Muted));
        drawing.Write($"then mean / core / shell {AtPull(pull)}", new(box.Left, y + 19), new(12, palette.Ink));
        drawing.Write($"in the end {ScheduleWords.Three(pull.Mean, pull.Core, pull.Shell)} % dry basis", new(box.Left, y + 37), new(12, palette.Ink));
        return y + 50;
    }

    private void DrawLane(ClassPull pull, Box lane, double top)
    {
        double middle = top + BarHeight / 2, pulled = X(lane, pull.PullDay ?? answer.Best.Days), rested = X(lane, Math.Min(answer.Best.Days, (pull.PullDay ?? answer.Best.Days) + pull.RestDays));
        drawing.Begin("lane");
        drawing.Fill([new Box(lane.Left, top, Math.Max(1, pulled - lane.Left), BarHeight).Corners], palette.Shade);
        if (rested - pulled > 2) drawing.Line(new Box(pulled, top + 1, rested - pulled, BarHeight - 2).Corners, new(palette.Shade, 1.5, Dash.Short, Blunt: true), closed: true);
        if (pull.PullDay is not null) drawing.Line([new(pulled, middle - 10), new(pulled, middle + 10)], new(palette.Accent, 3, Blunt: true));
        drawing.Write(Words(pull), new(lane.Left - (narrow ? 4 : 0), top + BarHeight + 18), new(12, palette.Muted));
        drawing.End();
    }

    private static string AtPull(ClassPull pull) => pull.PullDay is null ? "–" : ScheduleWords.Three(pull.MeanAtPull, pull.CoreAtPull, pull.ShellAtPull);

    private static string Words(ClassPull pull) => pull.PullDay is not { } day ? "dries to the end"
        : pull.RestDays > 0.02 ? Invariant($"dries to day {day:0.0}, then rests closed {pull.RestDays:0.0} days")
        : Invariant($"dries to day {day:0.0}, no rest needed");

    private static string Fit(string text, double width, double size, bool bold)
    {
        if (TextMeasure.Room(text, size, bold) <= width) return text;
        var lines = TextMeasure.Wrap(text, width - TextMeasure.Room("…", size, bold), size, bold);
        return lines[0] + "…";
    }
}
