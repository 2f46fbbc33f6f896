using System.Globalization;
using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// Reads EPW files: eight header lines, then a line of 35 fields for each hour (EnergyPlus, Auxiliary Programs, "EPW Data Dictionary", from
/// memory; physics.md, section 2). Old files of 33 fields, without rain, are read too.
/// </summary>
public sealed class EpwReader
{
    private const int HeaderLines = 8;
    private const int Fields = 35;
    private const int FieldsWithoutRain = 33;

    private readonly string _file;
    private readonly string[] _lines;
    private readonly ProblemList _problems;
    private readonly ReadingCheck _check = new();
    private readonly List<EpwRow> _rows = [];

    private EpwReader(string file, string text)
    {
        _file = file;
        _lines = text.TrimStart('\uFEFF').Split('\n').Select(line => line.TrimEnd('\r')).ToArray();
        _problems = new(file);
    }

    /// <summary>The weather of an EPW file.</summary>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="text">All of it.</param>
    /// <param name="site">What the person says beyond the file.</param>
    public static Result<HourlyWeather> Read(string file, string text, WeatherSite? site = null) => new EpwReader(file, text).Run(site ?? WeatherSite.Unknown);

    private Result<HourlyWeather> Run(WeatherSite site)
    {
        CheckHeader();
        if (_problems.Any) return _problems.Failure();
        var location = Location(_lines[0].Split(',', StringSplitOptions.TrimEntries));
        ReadRows();
        if (_problems.Any) return _problems.Failure();
        var series = Series(site.Or(location));
        Place(series);
        series.Notes.AddRange(_check.Notes());
        return SeriesCompletion.Complete(series);
    }

    private void CheckHeader()
    {
        if (_lines.Length <= HeaderLines)
        {
            _problems.Add(
                $"It has {_lines.Length} lines: a header at most, and no hours.",
                $"An EPW file has {HeaderLines} header lines and {TypicalCalendar.Hours} hours; fetch it again.");
            return;
        }

        if (!_lines[0].StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase)) _problems.Add(1, "It does not begin with LOCATION.", "Give an EPW file.");
        if (!_lines[7].StartsWith("DATA PERIODS", StringComparison.OrdinalIgnoreCase))
        {
            _problems.Add(HeaderLines, $"It begins with '{Start(_lines[7])}' instead of DATA PERIODS.", $"Keep all {HeaderLines} header lines of the file.");
            return;
        }

        var periods = _lines[7].Split(',', StringSplitOptions.TrimEntries);
        if (periods.Length > 2 && periods[2] is not ("" or "1"))
        {
            _problems.Add(HeaderLines, $"The file has {periods[2]} records per hour.", "Only files with 1 record per hour are read.");
        }
    }

    private WeatherSite Location(string[] fields)
    {
        string Field(int index) => index < fields.Length ? fields[index] : "";
        double? latitude = Number(Field(6)), longitude = Number(Field(7)), elevation = Number(Field(9));
        if (latitude is not (>= -90 and <= 90)) _problems.Add(
            1,
            $"The latitude '{Field(6)}' is not a number from -90 to 90.",
            "Mend the LOCATION line: LOCATION,city,state,country,source,WMO,latitude,longitude,time zone,elevation.");
        if (longitude is not (>= -180 and <= 180)) _problems.Add(1, $"The longitude '{Field(7)}' is not a number from -180 to 180.", "Mend the LOCATION line.");
        var name = string.Join(", ", new[] { Field(1), Field(2), Field(3) }.Where(part => part is not ("" or "-" or "unknown")));
        return new(name.Length > 0 ? name : _file, latitude, longitude, elevation);
    }

    private void ReadRows()
    {
        var expected = 0;
        for (var index = HeaderLines; index < _lines.Length; index++)
        {
            if (string.IsNullOrWhiteSpace(_lines[index])) continue;
            var fields = _lines[index].Split(',', StringSplitOptions.TrimEntries);
            if (expected == 0) expected = fields.Length == FieldsWithoutRain ? FieldsWithoutRain : Fields;
            if (fields.Length != expected)
            {
                _problems.Add(
                    index + 1,
                    $"It has {fields.Length} fields; every hour of an EPW file has {expected}.",
                    fields.Length < expected ? "The line is cut short or fields are missing: fetch the file again." : "Take out the extra commas.");
            }
            else
            {
                ReadRow(fields, index + 1);
            }
        }

        if (_rows.Count == 0 && !_problems.Any) _problems.Add(
            "It has a header but no hours.",
            $"An EPW file has {TypicalCalendar.Hours} hours; fetch it again.");
    }

    private void ReadRow(string[] fields, int line)
    {
        if (Time(fields, line) is not { } time) return;
        double? celsius = Value(fields, 7, 99.9, line), dewPoint = Value(fields, 8, 99.9, line), humidity = Value(fields, 9, 999, line) / 100;
        celsius = _check.Celsius(celsius, line);
        humidity = _check.Humidity(humidity, line) ?? Humidity.FromDewPoint(celsius, _check.Celsius(dewPoint, line));
        _rows.Add(new(
            time.Year, time.Month, time.Day, time.Hour, celsius, humidity,
            _check.Wind(Value(fields, 22, 999, line), line),
            _check.Sun(Value(fields, 14, 9999, line), line),
            fields.Length >= Fields ? _check.Rain(Value(fields, 34, 999, line), line) : null,
            fields.Length >= Fields ? RainHours(Value(fields, 35, 99, line)) : 1,
            _check.Pressure(Value(fields, 10, 999999, line), line)));
    }

    /// <summary>Accumulations are of 1 to 24 h; 0 and missing stand for 1 where a depth is given.</summary>
    private static int RainHours(double? hours) => (int)Math.Clamp(hours ?? 1, 1, 24);

    private (int Year, int Month, int Day, int Hour)? Time(string[] fields, int line)
    {
        var numbers = fields.Take(5).Select(field => int.TryParse(field, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number : -1).ToArray();
        var valid = numbers[0] is > 0 and < 9999 && numbers[1] is >= 1 and <= 12 && numbers[2] >= 1
            && numbers[2] <= CalendarSystem.Iso.GetDaysInMonth(2000, numbers[1]) && numbers[3] is >= 1 and <= 24 && numbers[4] is 0 or 60;
        if (valid) return (numbers[0], numbers[1], numbers[2], numbers[3]);
        _problems.Add(
            line,
            $"'{string.Join(',', fields.Take(5))}' is not a year, month, day, hour (1 to 24) and minute (0 or 60).",
            "Mend the line, e.g. 1996,1,1,24,0.");
        return null;
    }

    private double? Value(string[] fields, int column, double missingFrom, int line)
    {
        var text = fields[column - 1];
        if (text.Length == 0) return null;
        if (Number(text) is { } number) return number >= missingFrom ? null : number;
        _problems.Add(
            line,
            $"Field {column} is '{text}', which is not a number.",
            $"Write a number, or {missingFrom.ToString(CultureInfo.InvariantCulture)} for missing.");
        return null;
    }

    private ObservedSeries Series(WeatherSite site)
    {
        var typical = Typical();
        var hours = !typical && DateTime.IsLeapYear(_rows[0].Year) ? TypicalCalendar.Hours + 24 : TypicalCalendar.Hours;
        var series = new ObservedSeries(_file, new(typical ? TypicalCalendar.NominalYear : _rows[0].Year, 1, 1, 0, 0), hours)
        {
            Site = site, Source = Source(), Typical = typical,
        };
        if (typical && HasLeapDay) series.Notes.Add("29 February of the typical year is left out; the 28th stands for it.");
        if (typical && OneYear) series.Notes.Add($"All hours carry the year {_rows[0].Year}; taken as a typical year, since nothing in the header says that it is a real one.");
        return series;
    }

    private bool HasLeapDay => _rows.Exists(row => row is { Month: 2, Day: 29 });

    private bool OneYear => _rows.TrueForAll(row => row.Year == _rows[0].Year);

    /// <summary>A real year has one calendar year throughout and says so: an AMY source, or a year in the data period.</summary>
    private bool Typical()
    {
        var says = _lines[0].Contains("AMY", StringComparison.OrdinalIgnoreCase)
            || _lines[5].Contains("AMY", StringComparison.OrdinalIgnoreCase)
            || _lines[5].Contains("actual", StringComparison.OrdinalIgnoreCase)
            || _lines[7].Contains(_rows[0].Year.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            || HasLeapDay;
        return !(OneYear && says && (!HasLeapDay || DateTime.IsLeapYear(_rows[0].Year)));
    }

    private string Source()
    {
        var fields = _lines[0].Split(',', StringSplitOptions.TrimEntries);
        return $"EPW file {_file}, {(fields.Length > 4 ? fields[4] : "unknown source")}; terms: see the file's provider.";
    }

    private void Place(ObservedSeries series)
    {
        var placed = new bool[series.Count];
        var repeated = 0;
        foreach (var row in _rows)
        {
            if (series.Typical && row is { Month: 2, Day: 29 }) continue;
            var year = series.Typical ? TypicalCalendar.NominalYear : row.Year;
            var index = HourlyWeather.HoursBetween(series.Start, new LocalDateTime(year, row.Month, row.Day, 0, 0)) + row.Hour - 1;
            if (placed[index])
            {
                repeated++;
                continue;
            }

            placed[index] = true;
            Put(series, index, row);
        }

        EpwRain.Spread(series, _rows);
        if (repeated > 0) series.Notes.Add($"{repeated} hours occur more than once; the first is kept.");
        var absent = placed.Count(there => !there);
        if (absent > 0) series.Notes.Add($"{absent} of {series.Count} hours have no line; the last line is {_rows[^1].Month}-{_rows[^1].Day} hour {_rows[^1].Hour}.");
    }

    private static void Put(ObservedSeries series, int index, EpwRow row)
    {
        series.Celsius[index] = row.Celsius;
        series.RelativeHumidity[index] = row.RelativeHumidity;
        series.WindSpeed[index] = row.WindSpeed;
        series.GlobalSun[index] = row.GlobalSun;
        series.StationPressure[index] = row.StationPressure;
        series.Rain[index] = row.RainHours == 1 ? row.Rain : null;
    }

    private static double? Number(string text) => CellText.Number(text, decimalComma: false);

    private static string Start(string line) => line.Length <= 20 ? line : line[..20] + "...";
}
