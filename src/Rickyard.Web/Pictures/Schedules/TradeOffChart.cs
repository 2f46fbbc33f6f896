using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Chart;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>Days against energy: a numbered circle for each schedule worth choosing, the larger its gap the larger, and small dots for others that come as near the goal.</summary>
internal sealed class TradeOffChart(IDrawing drawing, Palette palette, ScheduleAnswer answer, bool narrow)
{
    private const double Smallest = 9;
    private const double Growth = 13;
    private const double Letters = 13;

    private readonly IReadOnlyList<TradeOffRow> _rows = TradeOffRow.Of(answer);
    private EvenAxis _days = new(0, 1, 1);
    private EvenAxis _energy = new(0, 1, 1);
    private Box _plot;

    /// <summary>Draws it into a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        _plot = new(box.Left + (narrow ? 44 : 56), box.Top + 66, box.Width - (narrow ? 58 : 76), box.Height - 66 - 48);
        _days = EvenAxis.Over([.. _rows.Select(row => row.Candidate.Days)], narrow ? 6 : 9);
        _energy = EvenAxis.Over([.. _rows.Select(row => Kilowatthours(row.Candidate))], 7);
        drawing.Begin("trade-off");
        DrawTitle(box);
        DrawAxes();
        DrawOthers();
        DrawCircles();
        drawing.End();
        return box.Bottom;
    }

    private static double Kilowatthours(ScheduleCandidate candidate) => candidate.EnergyJoules / EnergyCost.JoulesPerKilowattHour;

    private double MostGap => Math.Max(1e-6, _rows.Max(row => row.Candidate.Gap));

    private double Radius(ScheduleCandidate candidate) => Smallest + Growth * Math.Sqrt(Math.Max(0, candidate.Gap) / MostGap);

    private Point Place(ScheduleCandidate candidate) =>
        new(_plot.Left + _plot.Width * _days.Place(candidate.Days), _plot.Bottom - _plot.Height * _energy.Place(Kilowatthours(candidate)));

    private void DrawTitle(Box box)
    {
        drawing.Write("What it trades off", new(box.Left, box.Top + 14), new(15, palette.Ink, Bold: true));
        drawing.Write("larger circle: larger gap, core to shell", new(box.Left, box.Top + 33), new(13, palette.Muted));
        drawing.Write("energy bought, kWh", new(box.Left, box.Top + 54), new(12, palette.Muted));
    }

    private void DrawAxes()
    {
        foreach (var tick in _energy.Ticks)
        {
            var y = _plot.Bottom - _plot.Height * _energy.Place(tick);
            drawing.Line([new(_plot.Left, y), new(_plot.Right, y)], new(palette.Hairline, 1, Blunt: true));
            drawing.Write(_energy.Write(tick), new(_plot.Left - 8, y + 4), new(12, palette.Muted, Anchor: Anchor.End));
        }

        foreach (var tick in _days.Ticks)
        {
            var x = _plot.Left + _plot.Width * _days.Place(tick);
            drawing.Line([new(x, _plot.Bottom), new(x, _plot.Bottom + 5)], new(palette.Muted, 1, Blunt: true));
            drawing.Write(_days.Write(tick), new(x, _plot.Bottom + 20), new(12, palette.Muted, Anchor: Anchor.Middle));
        }

        drawing.Write("days from loading until all is ready", new(_plot.Centre.X, _plot.Bottom + 40), new(12, palette.Muted, Anchor: Anchor.Middle));
    }

    private void DrawOthers()
    {
        var most = _rows.Max(row => row.Candidate.Miss) + 1e-9;
        var others = answer.Tried.Where(one => one.Miss <= most && _days.Holds(one.Days) && _energy.Holds(Kilowatthours(one)) && one.Classes.All(pull => pull.PullDay is not null));
        Point[][] dots = [.. others.Select(one => Circle(Place(one), 1.8, 8))];
        if (dots.Length == 0) return;
        drawing.Begin("others");
        foreach (var dot in dots) drawing.Fill([dot], palette.Muted, 0.4);
        drawing.End();
    }

    private void DrawCircles()
    {
        foreach (var row in _rows.OrderBy(row => row.IsChosen).ThenByDescending(row => row.Candidate.Gap)) DrawCircle(row);
        var numbers = new NumberPlaces(_plot);
        foreach (var row in _rows.OrderByDescending(row => row.IsChosen)) DrawNumber(row, numbers);
    }

    private void DrawCircle(TradeOffRow row)
    {
        drawing.Begin(row.IsChosen ? "chosen" : "choice");
        var circle = Circle(Place(row.Candidate), Radius(row.Candidate), 36);
        drawing.Fill([circle], row.IsChosen ? palette.Accent : palette.Shade, row.IsChosen ? 0.35 : 0.25);
        drawing.Line(circle, new(row.IsChosen ? palette.Accent : palette.Shade, row.IsChosen ? 3 : 1.5), closed: true);
        drawing.End();
    }

    private void DrawNumber(TradeOffRow row, NumberPlaces numbers)
    {
        var words = FormattableString.Invariant($"{row.Number}") + (row.IsChosen ? " chosen" : "");
        var centre = Place(row.Candidate);
        var at = numbers.Take(centre, TextMeasure.Room(words, Letters, bold: true), Letters, row.IsChosen ? Radius(row.Candidate) + 4 : 0);
        DrawLeader(centre, Radius(row.Candidate), at.Foot);
        drawing.Write(words, at.Base, new(Letters, row.IsChosen ? palette.Accent : palette.Ink, Bold: true, Anchor.Middle));
    }

    /// <summary>A line from the edge of a circle to a number that stands well away from it.</summary>
    private void DrawLeader(Point centre, double radius, Point foot)
    {
        double dx = foot.X - centre.X, dy = foot.Y - centre.Y, length = Math.Sqrt(dx * dx + dy * dy);
        if (length < radius + 6) return;
        drawing.Line([new(centre.X + radius / length * dx, centre.Y + radius / length * dy), foot], new(palette.Muted, 0.8));
    }

    private static Point[] Circle(Point centre, double radius, int corners) =>
        [.. Enumerable.Range(0, corners).Select(i => 2 * Math.PI * i / corners).Select(turn => new Point(centre.X + radius * Math.Cos(turn), centre.Y + radius * Math.Sin(turn)))];
}
