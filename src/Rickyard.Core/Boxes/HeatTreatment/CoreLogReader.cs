using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using static System.FormattableString;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>
/// Reads a log of core temperatures: a table with a time column and one column a sensor whose header ends in °C or °F. Columns named for the air of the box
/// are kept apart; a reading that cannot be is no reading, and the batch has none at that time.
/// </summary>
public sealed class CoreLogReader
{
    /// <summary>Readings outside are faults of a sensor, such as an open thermocouple; wood chars above. Judgement. [°C]</summary>
    private const double Coldest = -60, Hottest = 150;

    private readonly ProblemList _problems;
    private readonly LogHeader _header;
    private readonly List<int> _lines = [];
    private readonly List<string[]> _rows = [];
    private int _faults;

    private CoreLogReader(string file, string[] lines, LogHeader header)
    {
        (_problems, _header) = (new(file), header);
        for (var index = header.Index + 1; index < lines.Length; index++)
            if (lines[index].AsSpan().Trim() is { Length: > 0 } text && text[0] != '#') Take(index + 1, DelimitedLine.Split(lines[index], header.Separator));
    }

    /// <summary>The log in a text.</summary>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="text">All of it.</param>
    public static Result<CoreLog> Read(string file, string text)
    {
        var lines = text.TrimStart('\uFEFF').Split('\n').Select(line => line.TrimEnd('\r')).ToArray();
        return LogHeader.Find(lines) is { } header ? new CoreLogReader(file, lines, header).Run() : ResultOf.Failure<CoreLog>(
            file,
            "No header line names a time and the temperature of a core.",
            "Give a table whose header has a time and one column a sensor with its unit, such as time,core 1 (°C),core 2 (°C),core 3 (°C),air (°C); °F is read too.");
    }

    private Result<CoreLog> Run()
    {
        AskUnits();
        if (_rows.Count == 0) _problems.Add("It has a header but no readings.", "Give at least two readings, five minutes apart or less.");
        if (_problems.Any) return ResultOf.Failure<CoreLog>(_problems.All);
        var times = new LogTimes(_header, _rows);
        var seconds = times.Seconds();
        AskTimes(seconds, times.Stamps);
        return _problems.Any ? ResultOf.Failure<CoreLog>(_problems.All) : ResultOf.Success(Build([.. seconds.OfType<double>()], times.Stamps));
    }

    private void Take(int line, string[] cells)
    {
        if (cells.Length != _header.Columns.Length)
        {
            _problems.Add(line, $"It has {cells.Length} fields; the header has {_header.Columns.Length}.", "Mend or take out the line; a cut last line means that the file is not complete.");
            return;
        }

        _lines.Add(line);
        _rows.Add(cells);
    }

    private void AskUnits()
    {
        foreach (var column in _header.Columns.Where(column => column.Kind == LogColumnKind.Unknown))
            _problems.Add(_header.Index + 1, $"The column {Echo.Of(column.Header)} does not say °C or °F.", "Write the unit behind each sensor's name, such as core 1 (°C), or take the column out.");
    }

    private void AskTimes(double?[] seconds, string[] stamps)
    {
        for (var row = 0; row < seconds.Length; row++)
        {
            if (seconds[row] is not { } now)
                _problems.Add(_lines[row], $"{Echo.Of(stamps[row])} is not a time that can be read.", "Write 2024-04-16 21:05:00, or 21:05, or minutes from the start in a column such as elapsed (min).");
            else if (row > 0 && seconds[row - 1] is { } before && now < before)
                _problems.Add(_lines[row], $"The time goes back to {Echo.Of(stamps[row])}.", "Put the readings in order of time; log in standard time, so that no hour comes twice.");
        }
    }

    /// <summary>Readings of the same time become one, the coldest of each sensor.</summary>
    private CoreLog Build(double[] seconds, string[] stamps)
    {
        int[] first = [.. Enumerable.Range(0, seconds.Length).Where(row => row == 0 || seconds[row] > seconds[row - 1])];
        var celsius = _header.Wood.Select(column => (double[])[.. first.Select((row, at) =>
            Enumerable.Range(row, (at + 1 < first.Length ? first[at + 1] : seconds.Length) - row).Select(same => Reading(column, same)).Aggregate(Math.Min))]).ToList();
        return new()
        {
            Sensors = [.. _header.Wood.Select(column => column.Header)],
            AirSensors = [.. _header.Air.Select(column => column.Header)],
            Seconds = [.. first.Select(row => seconds[row] - seconds[0])],
            Stamps = [.. first.Select(row => stamps[row])],
            Celsius = celsius,
            Notes = [.. Notes(celsius)],
        };
    }

    private double Reading(LogColumn column, int row)
    {
        var cell = _rows[row][column.Index];
        var celsius = CellText.IsMissing(cell) ? double.NaN : column.Celsius(CellText.Number(cell, _header.Separator == ';') ?? double.NaN);
        if (celsius is >= Coldest and <= Hottest) return celsius;
        if (!CellText.IsMissing(cell)) _faults++;
        return double.NaN;
    }

    private IEnumerable<string> Notes(List<double[]> celsius)
    {
        var others = _header.Columns.Where(column => column.Kind == LogColumnKind.Other && column.Header.Length > 0).Select(column => column.Header).ToList();
        if (others.Count > 0) yield return $"Not counted as cores: {string.Join(", ", others)}.";
        var missing = celsius.Sum(sensor => sensor.Count(double.IsNaN));
        if (missing > 0) yield return Invariant($"{missing} readings are missing; where one sensor has none, the batch has none.");
        if (_faults > 0) yield return Invariant($"{_faults} cells are no temperature from {Coldest:0} to {Hottest:0} °C and count as missing: look at the sensor.");
    }
}
