using System.Text.RegularExpressions;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using static System.FormattableString;

namespace Rickyard.Core.Measuring.Intake;

/// <summary>
/// A table of readings, parted into columns. One line is one reading, so that a quotation mark left open spoils its own line alone; empty lines and lines that begin with # are passed over.
/// </summary>
/// <param name="Rows">Its readings.</param>
/// <param name="Broken">Lines that cannot be parted into columns.</param>
/// <param name="Notes">Columns that are not read.</param>
internal sealed partial record ReadingTable(IReadOnlyList<GivenReading> Rows, IReadOnlyList<LeftOutReading> Broken, IReadOnlyList<string> Notes)
{
    /// <summary>More readings of one lot nobody takes; judgement.</summary>
    public const int MostRows = 10_000;

    /// <summary>Text accepted: 400 letters for each row.</summary>
    public const int MostLetters = 400 * MostRows;

    private const string WantedHeader = "Begin with a line that names the columns: date,piece,kind,place,value,unit,scale,temperature,note (docs/readings.md).";

    /// <summary>The table, or what keeps it from being read.</summary>
    public static Result<ReadingTable> Read(string file, string text)
    {
        if (text.Length > MostLetters) return Failure(file, Invariant($"It has more than {MostLetters / 1_000_000.0:0.#} million letters."), Invariant($"Give the readings of one lot, at most {MostRows} lines."));
        var lines = text.TrimStart('\uFEFF').Split('\n').Select((line, index) => (Text: line.TrimEnd('\r'), Number: index + 1)).Where(line => IsRead(line.Text)).ToList();
        if (lines.Count == 0) return Failure(file, "The file is empty.", WantedHeader);
        var (header, separator) = (lines[0], DelimitedLine.SeparatorOf(lines[0].Text));
        string[] columns = [.. DelimitedLine.Split(header.Text, separator).Select(name => name.ToLowerInvariant())];
        if (ColumnFault(file, header.Text, columns) is { } fault) return ResultOf.Failure<ReadingTable>([fault]);
        if (lines.Count == 1) return Failure(file, "It has a header but no readings.", "Give at least one line below it.");
        if (lines.Count - 1 > MostRows) return Failure(file, Invariant($"It has {lines.Count - 1} readings, more than {MostRows}."), "Give the readings of one lot, and leave out those of other lots.");
        var rows = lines.Skip(1).Select(line => Row(file, line, columns, separator)).ToList();
        return ResultOf.Success(new ReadingTable([.. rows.OfType<GivenReading>()], [.. rows.OfType<LeftOutReading>()], [.. Unread(file, columns)]));
    }

    private static Result<ReadingTable> Failure(string file, string whatIsWrong, string whatToDo) => ResultOf.Failure<ReadingTable>(file, whatIsWrong, whatToDo);

    private static bool IsRead(string line) => !line.StartsWith('#') && line.Any(letter => letter is not (',' or ';') && !char.IsWhiteSpace(letter));

    private static Problem? ColumnFault(string file, string header, string[] columns)
    {
        string[] missing = [.. ReadingColumns.Needed.Except(columns)];
        if (missing.Length == ReadingColumns.Needed.Count) return new(file, $"It has no header: it begins with {Echo.Of(header)}.", WantedHeader);
        if (missing.Length > 0) return new(file, $"Its header does not name {CaseObject.Listed(missing)}.", WantedHeader);
        string[] twice = [.. ReadingColumns.All.Where(name => columns.Count(column => column == name) > 1)];
        return twice.Length > 0 ? new(file, $"Its header names {CaseObject.Listed(twice)} twice.", "Give each column once.") : null;
    }

    private static IEnumerable<string> Unread(string file, string[] columns) => columns
        .Where(column => column.Length > 0 && !ReadingColumns.All.Contains(column))
        .Select(column => $"{file}: the column {Echo.Of(column)} is not read{(NearName.Find(column, ReadingColumns.All) is { } near ? $"; did you mean \"{near}\"?" : ".")}");

    private static object Row(string file, (string Text, int Number) line, string[] columns, char separator)
    {
        var cells = DelimitedLine.Split(line.Text, separator);
        var path = $"{file}, line {line.Number}, ";
        if (cells.Length < columns.Length && line.Text.Count(letter => letter == '"') % 2 == 1)
            return Broken("A quotation mark is not closed.", "Close it on the same line: a reading takes one line.");
        if (cells.Skip(columns.Length).Any(cell => cell.Length > 0))
            return Broken(Invariant($"It has {cells.Length} cells, the header {columns.Length}."), "Put a text with a comma in it into quotation marks, and write a point in numbers.");
        return new GivenReading(file, line.Number, path, columns.Zip(cells).Where(cell => ReadingColumns.All.Contains(cell.First)).ToDictionary(cell => cell.First, cell => Plain(cell.First, cell.Second, separator)));

        LeftOutReading Broken(string what, string toDo) => new(file, line.Number, line.Text.Trim(), [new($"{file}, line {line.Number}", what, toDo)]);
    }

    // Where commas do not part cells they are decimal marks.
    private static string Plain(string column, string cell, char separator) =>
        separator != ',' && column is ReadingColumns.Place or ReadingColumns.Value or ReadingColumns.Temperature ? DecimalComma().Replace(cell, ".") : cell;

    [GeneratedRegex(@"(?<=\d),(?=\d)")]
    private static partial Regex DecimalComma();
}
