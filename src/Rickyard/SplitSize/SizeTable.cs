using System.Globalization;
using Rickyard.Core.Planning;
using Rickyard.Screens;
using Rickyard.Web.Pictures.Sizes;
using static System.FormattableString;

namespace Rickyard.SplitSize;

/// <summary>The chart as a table in the terminal.</summary>
internal static class SizeTable
{
    public static void Tell(SizeCalendar calendar, Screen screen)
    {
        screen.Paragraph($"{SizeWords.Title(calendar)}, widest width in cm by month of stacking and months until needed. {SizeWords.Promise(calendar)}");
        screen.Table(new string('l', 1) + new string('r', calendar.Request.Spans.Count), ["stacked on", .. calendar.Request.Spans.Select(months => Invariant($"{months} mo"))], calendar.Starts.Select((start, row) => (IReadOnlyList<string>)
            [start.ToString("d MMMM", CultureInfo.InvariantCulture), .. calendar.Widths[row].Select(width => width is { } known ? Invariant($"{100 * known:0.#}") : "none")]));
        screen.Paragraph(Invariant($"{SizeWords.Place(calendar)} {SizeWords.Wood(calendar)} Model {calendar.ModelVersion}, {calendar.Request.Members} members, seed {calendar.Request.Seed}, {calendar.Seconds:0} s."));
    }
}
