using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>The rows of one block of a weather table, cut into cells and with their times; later blocks and legends are left out.</summary>
internal sealed class TableRows
{
    private readonly TableHeader _header;
    private readonly ProblemList _problems;
    private readonly bool _monthFirst;

    private TableRows(TableHeader header, ProblemList problems, List<(int Line, string[] Cells)> rows)
    {
        _header = header;
        _problems = problems;
        Cells = rows;
        _monthFirst = MonthFirst();
    }

    /// <summary>Line number and cells of each row.</summary>
    public List<(int Line, string[] Cells)> Cells { get; }

    /// <summary>Line of a second block that is not read, or null.</summary>
    public int? SecondBlock { get; private init; }

    public static TableRows Read(string[] lines, int headerIndex, TableHeader header, ProblemList problems)
    {
        var rows = new List<(int, string[])>();
        int? second = null;
        var blankBefore = false;
        for (var index = headerIndex + 1; index < lines.Length; index++)
        {
            if (string.IsNullOrWhiteSpace(lines[index]))
            {
                blankBefore = true;
                continue;
            }

            var cells = DelimitedLine.Split(lines[index], header.Separator);
            if (blankBefore && !IsRow(cells, header))
            {
                second = index + 1;
                break;
            }

            blankBefore = false;
            if (cells.Length == header.Columns.Length) rows.Add((index + 1, cells));
            else problems.Add(
                index + 1,
                $"It has {cells.Length} fields; the header has {header.Columns.Length}.",
                "Mend or take out the line; a cut last line means that the file is not complete.");
        }

        return new(header, problems, rows) { SecondBlock = second };
    }

    /// <summary>Time of a row as written; a problem and null where it cannot be read.</summary>
    public TimeStamp? TimeOf((int Line, string[] Cells) row)
    {
        var text = DateText(row.Cells);
        if (TimeStamp.Parse(text, _monthFirst) is { } stamp && WithClock(stamp, row.Cells) is { } whole) return whole;
        _problems.Add(row.Line, $"'{text}' is not a time that can be read.", "Write times as 2024-04-16 13:00 (also 16.04.2024 13:00, 24:00 for midnight).");
        return null;
    }

    private string DateText(string[] cells)
    {
        if (_header[ColumnRole.Time] is { Name: "time hour" } whole) return cells[whole.Index];
        return _header.DateInColumns
            ? $"{cells[_header[ColumnRole.Year]!.Index]}-{cells[_header[ColumnRole.Month]!.Index]}-{cells[_header[ColumnRole.Day]!.Index]}"
            : cells[_header[ColumnRole.Time]!.Index];
    }

    private TimeStamp? WithClock(TimeStamp stamp, string[] cells)
    {
        if (stamp.HasClock || _header[ColumnRole.Clock] is not { } column) return stamp;
        return TimeStamp.ParseClock(cells[column.Index]) is { } clock
            ? stamp with { Local = stamp.Local.PlusMinutes(60 * clock.Hour + clock.Minute), HasClock = true }
            : null;
    }

    private static bool IsRow(string[] cells, TableHeader header) =>
        cells.Length == header.Columns.Length && (header.DateInColumns || TimeStamp.Parse(cells[header[ColumnRole.Time]!.Index], monthFirst: true) is not null
            || TimeStamp.Parse(cells[header[ColumnRole.Time]!.Index], monthFirst: false) is not null);

    /// <summary>Which of day and month comes first in 3/4/2024 is seen from the rows where one number is above 12.</summary>
    private bool MonthFirst()
    {
        if (_header[ColumnRole.Time] is not { } time || Cells.Count == 0 || TimeStamp.Slashes(Cells[0].Cells[time.Index]) is null) return false;
        var pairs = Cells.Select(row => TimeStamp.Slashes(row.Cells[time.Index])).OfType<(int First, int Second)>().ToList();
        var monthFirst = pairs.Exists(pair => pair.Second > 12);
        if (monthFirst != pairs.Exists(pair => pair.First > 12)) return monthFirst;
        _problems.Add(Cells[0].Line, $"In '{Cells[0].Cells[time.Index]}' it cannot be seen which number is the month.", "Write dates as 2024-04-16.");
        return false;
    }
}
