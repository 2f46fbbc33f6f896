using MathNet.Numerics.Random;
using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// Reads tables of daily highs, lows, rain and perhaps wind (NOAA Daily Summaries and the like) and builds the hours: temperature by the
/// shape of the day, the dew point at the low (no humidity is recorded), rain in four hours of the day.
/// </summary>
internal sealed class DailyTableReader
{
    /// <summary>A daily high above this is not in °C: the hottest ever measured is 57. [°C]</summary>
    private const double HottestCelsius = 57;

    /// <summary>Nowhere that hardwood grows does a whole year stay below this in °F (14 °C). [°F]</summary>
    private const double CoolestSummerFahrenheit = 57;

    private const int RainHours = 4;

    private readonly string _file;
    private readonly TablePreamble _preamble;
    private readonly TableHeader _header;
    private readonly WeatherSite _site;
    private readonly ProblemList _problems;
    private readonly TableRows _rows;
    private readonly ReadingCheck _check = new();
    private readonly List<string> _notes = [];

    private DailyTableReader(string file, string[] lines, TablePreamble preamble, TableHeader header, WeatherSite site)
    {
        _file = file;
        _preamble = preamble;
        _header = header;
        _site = site.Or(preamble.Site);
        _problems = new(file);
        _rows = TableRows.Read(lines, preamble.HeaderIndex, header, _problems);
    }

    public static Result<HourlyWeather> Read(string file, string[] lines, TablePreamble preamble, TableHeader header, WeatherSite site) =>
        new DailyTableReader(file, lines, preamble, header, site).Run();

    private Result<HourlyWeather> Run()
    {
        if (_rows.Cells.Count == 0 && !_problems.Any) _problems.Add("It has a header but no rows.", "Give one row a day.");
        if (_problems.Any) return _problems.Failure();
        var summaries = Summaries();
        double? Value(ColumnRole role, (int Line, string[] Cells) row) => Read(role, row, summaries);
        var days = new SortedDictionary<LocalDate, (double? High, double? Low, double? Rain, double? Wind)>();
        foreach (var row in _rows.Cells)
        {
            if (_rows.TimeOf(row) is not { } time) continue;
            days[time.Local.Date] = (
                _check.Celsius(Value(ColumnRole.High, row), row.Line), _check.Celsius(Value(ColumnRole.Low, row), row.Line),
                Value(ColumnRole.Rain, row), _check.Wind(Value(ColumnRole.Wind, row), row.Line));
        }

        if (!_problems.Any) HourlyAxis.CheckSpan(days.Keys.First().AtMidnight(), days.Keys.Last().AtMidnight(), _problems);
        return _problems.Any ? _problems.Failure() : SeriesCompletion.Complete(Hours(days));
    }

    /// <summary>NOAA's Daily Summaries do not say their units; either all are US units or all are metric.</summary>
    private (string Temperature, string Wind, string Rain)? Summaries()
    {
        if (!Array.Exists(_header.Columns, column => column.Name == "tmax") || _header.UnitOf(ColumnRole.High) is not null) return null;
        var highs = _rows.Cells.Select(row => CellText.Number(row.Cells[_header[ColumnRole.High]!.Index], decimalComma: false)).OfType<double>().ToList();
        if (highs.Count > 0 && highs.Max() > HottestCelsius)
        {
            _notes.Add("The highs can only be in °F, so rain is taken in inches and wind in mph.");
            return ("f", "mph", "in");
        }

        if (highs.Count >= 350 && highs.Max() < CoolestSummerFahrenheit)
        {
            _notes.Add("A year of highs below 57 can only be in °C, so rain is taken in mm and wind in m/s.");
            return ("c", "m/s", "mm");
        }

        return null;
    }

    private double? Read(ColumnRole role, (int Line, string[] Cells) row, (string Temperature, string Wind, string Rain)? summaries)
    {
        if (_header[role] is not { } column || CellText.IsMissing(row.Cells[column.Index])) return null;
        var unit = column.Unit ?? role switch { ColumnRole.Wind => summaries?.Wind, ColumnRole.Rain => summaries?.Rain, _ => summaries?.Temperature };
        if (unit is null || ColumnUnits.Conversion(role, unit) is not { } convert)
        {
            _problems.Add(
                _preamble.HeaderIndex + 1,
                $"Column '{column.Header}' does not say its unit.",
                $"Write the unit in the header ({ColumnUnits.Allowed(role)}), e.g. '{column.Name} ({ColumnUnits.Allowed(role).Split([',', ' '])[0]})'.");
            return null;
        }

        if (CellText.Number(row.Cells[column.Index], decimalComma: _header.Separator != ',') is { } number) return convert(number);
        _problems.Add(
            row.Line,
            $"Column '{column.Header}' holds '{row.Cells[column.Index]}', which is not a number.",
            "Write a number, or leave the cell empty.");
        return null;
    }

    private ObservedSeries Hours(SortedDictionary<LocalDate, (double? High, double? Low, double? Rain, double? Wind)> days)
    {
        var first = days.Keys.First();
        var count = Period.Between(first, days.Keys.Last(), PeriodUnits.Days).Days + 1;
        var series = new ObservedSeries(_file, first.AtMidnight(), 24 * count)
        {
            Site = _site with { Name = _site.Name ?? Name() }, Source = $"Daily table {_file}; terms: see its provider.",
        };
        series.Notes.AddRange(_notes);
        series.Notes.Add("Hours are built from daily highs and lows by the usual shape of a day.");
        series.Notes.AddRange(_check.Notes());
        var random = new Xoshiro256StarStar(1);
        foreach (var (date, day) in days) Put(series, 24 * Period.Between(first, date, PeriodUnits.Days).Days, day, random.Next(0, 24 - RainHours));
        return series;
    }

    private static void Put(ObservedSeries series, int from, (double? High, double? Low, double? Rain, double? Wind) day, int rainFrom)
    {
        for (var hour = 0; hour < 24; hour++)
        {
            if (day is { High: { } high, Low: { } low }) series.Celsius[from + hour] = (high + low) / 2 + (high - low) * DayShape.TemperatureAt(hour);
            if (day.Wind is { } wind) series.WindSpeed[from + hour] = wind * DayShape.WindAt(hour);
            if (day.Rain is { } rain) series.Rain[from + hour] = hour >= rainFrom && hour < rainFrom + RainHours ? rain / RainHours : 0;
        }
    }

    private string Name() => Array.Find(_header.Columns, column => column.Name == "name") is { } column ? _rows.Cells[0].Cells[column.Index] : _file;
}
