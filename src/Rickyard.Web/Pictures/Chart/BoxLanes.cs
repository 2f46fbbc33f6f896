using Rickyard.Core.Boxes;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Chart;

/// <summary>Under the curves of a hot box, along the same days: temperature and humidity of its air, and where its stages begin.</summary>
internal sealed class BoxLanes(IDrawing drawing, Palette palette, ChargeRun charge, double[] days, bool narrow)
{
    private const double LaneHeight = 46;
    private const double Gap = 30;
    private const double Thinning = 0.1;

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("box");
        var lane = new Box(box.Left + (narrow ? 58 : CutTable.Gutter), box.Top + (narrow ? 40 : 12), box.Width - (narrow ? 58 + 78 : CutTable.Gutter + 110), LaneHeight);
        DrawLane(box, lane, "Air of the box", "°C", [.. charge.Series.AirCelsius], new(palette.Ink, 2));
        var below = lane with { Top = lane.Bottom + (narrow ? Gap + 14 : Gap) };
        DrawLane(box, below, "Its humidity", "%", [.. charge.Series.AirHumidity.Select(humidity => 100 * humidity)], new(palette.Ink, 1.5, Dash.Long));
        DrawStages(lane, below.Bottom);
        drawing.End();
        return below.Bottom + 22;
    }

    private double X(Box lane, double day) => lane.Left + lane.Width * day / Math.Max(days[^1], 1e-9);

    private void DrawLane(Box box, Box lane, string name, string unit, double[] values, Stroke stroke)
    {
        double top = Math.Max(1, values.Max()), low = Math.Min(0, values.Min());
        double Y(double value) => lane.Bottom - lane.Height * (value - low) / (top - low);
        drawing.Write($"{name}, {unit}", new(box.Left, narrow ? lane.Top - 12 : lane.Centre.Y + 4), new(13, palette.Ink, Bold: true));
        foreach (var level in new[] { low, top })
        {
            drawing.Line([new(lane.Left, Y(level)), new(lane.Right, Y(level))], new(palette.Hairline, 1, Blunt: true));
            drawing.Write(Invariant($"{level:0}"), new(lane.Left - 8, Y(level) + 4), new(12, palette.Muted, Anchor: Anchor.End));
        }

        drawing.Line(Field.Outline.Thinned([.. days.Select((day, at) => new Point(X(lane, day), Y(values[at])))], Thinning), stroke);
        drawing.Write(Invariant($"{values[^1]:0} {unit}"), new(lane.Right + 13, Y(values[^1]) + 4.5), new(narrow ? 12 : 13, palette.Ink));
    }

    private void DrawStages(Box lane, double bottom)
    {
        var from = 0.0;
        for (var stage = 0; stage < charge.Plan.Stages.Count - 1; stage++)
        {
            if (charge.Plan.Stages[stage].Days is not { } length || (from += length) >= days[^1]) return;
            drawing.Line([new(X(lane, from), lane.Top - 4), new(X(lane, from), bottom)], new(palette.Muted, 1, Dash.Short, Blunt: true));
            var words = Invariant($"stage {stage + 2}");
            var half = TextMeasure.Room(words, 12) / 2;
            drawing.Write(words, new(Math.Clamp(X(lane, from), lane.Left + half, lane.Right - half), bottom + 16), new(12, palette.Muted, Anchor: Anchor.Middle));
        }
    }
}
