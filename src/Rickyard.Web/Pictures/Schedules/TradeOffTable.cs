using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>The numbered schedules of the plot as a table.</summary>
internal sealed class TradeOffTable(IDrawing drawing, Palette palette, ScheduleAnswer answer, bool narrow)
{
    private readonly IReadOnlyList<TradeOffRow> _rows = TradeOffRow.Of(answer);

    private double Size => narrow ? 12 : 14;

    private double RowHeight => narrow ? 24 : 30;

    private static string[] Heads => ["", "days", "kWh", "cost", "gap", "setting"];

    // Right ends of the numbers as parts of the width; the setting begins at the last.
    private double[] Columns => narrow ? [0.04, 0.17, 0.32, 0.5, 0.63, 0.67] : [0.03, 0.14, 0.28, 0.46, 0.6, 0.66];

    /// <summary>Draws it into the width of a box.</summary>
    /// <returns>Where it ends, from the top of the page. [px]</returns>
    public double Draw(Box box)
    {
        drawing.Begin("choices");
        drawing.Write("The choices", new(box.Left, box.Top + 14), new(15, palette.Ink, Bold: true));
        drawing.Write("gap in points of moisture; % is where the vent opens", new(box.Left, box.Top + 33), new(narrow ? 12 : 13, palette.Muted));
        var top = box.Top + 58;
        DrawCells(box, top, Heads, new(Size - 1, palette.Muted));
        foreach (var row in _rows)
        {
            drawing.Line([new(box.Left, top + 8), new(box.Right, top + 8)], new(palette.Hairline, 1, Blunt: true));
            top += RowHeight;
            DrawCells(box, top, Cells(row), new(Size, row.IsChosen ? palette.Accent : palette.Ink, row.IsChosen));
        }

        drawing.End();
        return top + 10;
    }

    private string[] Cells(TradeOffRow row) =>
    [
        FormattableString.Invariant($"{row.Number}"), FormattableString.Invariant($"{row.Candidate.Days:0.0}"),
        FormattableString.Invariant($"{row.Candidate.EnergyJoules / EnergyCost.JoulesPerKilowattHour:0}"), ScheduleWords.Cost(answer, row.Candidate) ?? "–",
        FormattableString.Invariant($"{100 * row.Candidate.Gap:0.0}"), ScheduleWords.ShortSetting(row.Candidate) + (row.IsChosen && !narrow ? ", chosen" : ""),
    ];

    private void DrawCells(Box box, double y, string[] cells, TextStyle style)
    {
        for (var column = 0; column < cells.Length; column++)
        {
            var isText = column == cells.Length - 1;
            if (cells[column].Length > 0) drawing.Write(cells[column], new(box.Left + Columns[column] * box.Width, y), style with { Anchor = isText ? Anchor.Start : Anchor.End });
        }
    }
}
