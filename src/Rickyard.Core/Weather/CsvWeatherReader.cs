using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// Reads tables of hourly weather (or of shorter steps, or up to 6 h) with named columns: home stations, spreadsheets, open exports. Units come
/// from the headers, or from the documentation of a known export; a unit that is nowhere said is asked for, never guessed.
/// </summary>
public sealed class CsvWeatherReader
{
    private static readonly ColumnRole[] Needed = [ColumnRole.Temperature, ColumnRole.DewPoint, ColumnRole.RelativeHumidity, ColumnRole.Wind, ColumnRole.Rain];
    private static readonly ColumnRole[] Welcome = [ColumnRole.Sun, ColumnRole.StationPressure, ColumnRole.SeaLevelPressure];

    private readonly string _file;
    private readonly WeatherSite _site;
    private readonly TablePreamble _preamble;
    private readonly TableHeader _header;
    private readonly TableRows _rows;
    private readonly ProblemList _problems;
    private readonly ReadingCheck _check = new();
    private readonly Dictionary<ColumnRole, Func<double, double>> _conversions = [];
    private readonly List<string> _notes = [];

    private CsvWeatherReader(string file, string[] lines, TablePreamble preamble, TableHeader header, WeatherSite site)
    {
        _file = file;
        _preamble = preamble;
        _header = header;
        _site = site.Or(preamble.Site);
        _problems = new(file);
        _rows = TableRows.Read(lines, preamble.HeaderIndex, header, _problems);
    }

    /// <summary>The weather of a table.</summary>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="text">All of it.</param>
    /// <param name="site">What the person says beyond the file.</param>
    public static Result<HourlyWeather> Read(string file, string text, WeatherSite? site = null)
    {
        var lines = text.TrimStart('\uFEFF').Split('\n').Select(line => line.TrimEnd('\r')).ToArray();
        if (TablePreamble.Find(lines) is not { } preamble) return NoHeader(file, lines);
        var header = TableHeader.Parse(lines[preamble.HeaderIndex]);
        return header.Daily
            ? DailyTableReader.Read(file, lines, preamble, header, site ?? WeatherSite.Unknown)
            : new CsvWeatherReader(file, lines, preamble, header, site ?? WeatherSite.Unknown).Run();
    }

    private static Result<HourlyWeather> NoHeader(string file, string[] lines)
    {
        var first = Array.Find(lines, line => !string.IsNullOrWhiteSpace(line)) ?? "";
        return ResultOf.Failure<HourlyWeather>(
            file,
            $"No header line names a time and a temperature (the file begins '{(first.Length > 60 ? first[..60] + "..." : first)}').",
            "Give a table whose header has at least a time, a temperature and a humidity with units, e.g. time,temperature (°C),humidity (%),wind speed (km/h),rain (mm); or an EPW file.");
    }

    private Result<HourlyWeather> Run()
    {
        FindUnits();
        if (_rows.Cells.Count == 0 && !_problems.Any) _problems.Add("It has a header but no rows.", "Give at least one row an hour.");
        if (_problems.Any) return _problems.Failure();
        var samples = OneStation().Select(Sample).OfType<(WeatherSample Sample, double? Offset)>().ToList();
        if (_problems.Any) return _problems.Failure();
        return Complete(InStandardTime(samples));
    }

    private void FindUnits()
    {
        foreach (var role in Needed.Concat(Welcome).Where(role => _header[role] is not null)) FindUnit(role, mustHave: Needed.Contains(role));
        if (_header.Layout is { } layout && _header.Columns.All(column => column.Unit is null)) _notes.Add($"Units as documented for: {layout.Name}.");
        if (_header[ColumnRole.DewPoint] is null && _header[ColumnRole.RelativeHumidity] is null) _notes.Add("The table has no column of humidity or dew point.");
    }

    private void FindUnit(ColumnRole role, bool mustHave)
    {
        var column = _header[role]!;
        var unit = _header.UnitOf(role) ?? (role == ColumnRole.RelativeHumidity && LooksLikePercent(column) ? "%" : null);
        var conversion = unit is null ? null : ColumnUnits.Conversion(role, unit);
        if (conversion is not null)
        {
            _conversions[role] = conversion;
        }
        else if (!mustHave)
        {
            _notes.Add($"Column '{column.Header}' is left out, since its unit is not one of {ColumnUnits.Allowed(role)}.");
        }
        else
        {
            _problems.Add(
                _preamble.HeaderIndex + 1,
                unit is null ? $"Column '{column.Header}' does not say its unit." : $"Column '{column.Header}' has the unit '{unit}', which is not known.",
                $"Write the unit in the header ({ColumnUnits.Allowed(role)}), e.g. '{column.Name} ({ColumnUnits.Allowed(role).Split([',', ' '])[0]})'.");
        }
    }

    /// <summary>Relative humidity without a unit is in percent when any value is above 1.5; fractions must say so.</summary>
    private bool LooksLikePercent(WeatherColumn column) => _rows.Cells.Exists(row => CellText.Number(row.Cells[column.Index], DecimalComma) > 1.5);

    private bool DecimalComma => _header.Separator != ',';

    private List<(int Line, string[] Cells)> OneStation()
    {
        if (_header[ColumnRole.Station] is not { } column) return _rows.Cells;
        var stations = _rows.Cells.Select(row => row.Cells[column.Index]).Distinct().ToList();
        if (stations.Count == 1) return _rows.Cells;
        var wanted = _site.Station ?? stations[0];
        if (!stations.Contains(wanted)) _problems.Add($"It has no station '{wanted}'.", $"Choose one of {string.Join(", ", stations)}.");
        if (_site.Station is null) _notes.Add($"The file holds {stations.Count} stations ({string.Join(", ", stations)}); the first is taken.");
        return _rows.Cells.FindAll(row => row.Cells[column.Index] == wanted);
    }

    private (WeatherSample Sample, double? Offset)? Sample((int Line, string[] Cells) row)
    {
        if (_rows.TimeOf(row) is not { } time) return null;
        var celsius = _check.Celsius(Value(ColumnRole.Temperature, row), row.Line);
        var humidity = _check.Humidity(Value(ColumnRole.RelativeHumidity, row), row.Line);
        return (new(
            time.Local, row.Line, celsius,
            humidity ?? Humidity.FromDewPoint(celsius, _check.Celsius(Value(ColumnRole.DewPoint, row), row.Line)),
            _check.Wind(Value(ColumnRole.Wind, row), row.Line),
            _check.Rain(Value(ColumnRole.Rain, row), row.Line),
            _check.Sun(Value(ColumnRole.Sun, row), row.Line),
            _check.Pressure(Pressure(row), row.Line)), time.UtcOffsetHours ?? _preamble.UtcOffsetHours ?? OffsetOfColumn);
    }

    /// <summary>A time column may say in its name that it is in UTC.</summary>
    private double? OffsetOfColumn => _header[ColumnRole.Time] is { } time && (time.Unit is "utc" or "z" || time.Name.EndsWith("utc", StringComparison.Ordinal)) ? 0 : null;

    private double? Pressure((int Line, string[] Cells) row) => Value(ColumnRole.StationPressure, row)
        ?? (Value(ColumnRole.SeaLevelPressure, row) is { } seaLevel ? StationPressure.FromSeaLevel(_site.ElevationMetres ?? 0, seaLevel) : null);

    private double? Value(ColumnRole role, (int Line, string[] Cells) row)
    {
        if (!_conversions.TryGetValue(role, out var convert)) return null;
        var column = _header[role]!;
        var text = row.Cells[column.Index];
        if (CellText.IsMissing(text)) return null;
        if (CellText.Number(text, DecimalComma) is { } number) return convert(number);
        _problems.Add(
            row.Line,
            $"Column '{column.Header}' holds '{text}', which is not a number.",
            "Write a number, or leave the cell empty where nothing was measured.");
        return null;
    }

    /// <summary>Times with a known offset from UTC are moved to the standard time of the longitude, or of the smallest offset where that is not known.</summary>
    private List<WeatherSample> InStandardTime(List<(WeatherSample Sample, double? Offset)> samples)
    {
        var offsets = samples.Select(sample => sample.Offset).OfType<double>().Distinct().ToList();
        if (offsets.Count == 0) return Sorted(samples.Select(sample => sample.Sample));
        var standard = _site.Longitude is { } longitude ? Math.Round(longitude / 15) : offsets.Min();
        _notes.Add(FormattableString.Invariant($"Times are given with their offset from UTC and were moved to UTC{standard:+0;-0;+0}, standard time all year."));
        return Sorted(samples.Select(sample => sample.Sample with { At = sample.Sample.At.PlusMinutes((long)Math.Round(60 * (standard - (sample.Offset ?? standard)))) }));
    }

    private static List<WeatherSample> Sorted(IEnumerable<WeatherSample> samples) => [.. samples.OrderBy(sample => sample.At)];

    private Result<HourlyWeather> Complete(List<WeatherSample> samples)
    {
        if (HourlyAxis.StepMinutes(samples) > HourlyAxis.LongestStepMinutes)
        {
            _problems.Add(
                FormattableString.Invariant($"Its rows are about {HourlyAxis.StepMinutes(samples) / 60:0} h apart."),
                "Give rows at most 6 h apart, or a daily table with highs, lows and rain.");
        }

        HourlyAxis.CheckSpan(samples[0].At, samples[^1].At, _problems);
        if (_problems.Any) return _problems.Failure();
        var series = new ObservedSeries(_file, HourlyAxis.Start(samples), (int)HourlyAxis.Span(samples)) { Site = Named(), Source = $"Table {_file}; terms: see its provider." };
        series.Notes.AddRange(_notes);
        HourlyAxis.Place(samples, series);
        series.Notes.AddRange(_check.Notes());
        if (_rows.SecondBlock is { } line) series.Notes.Add($"What begins on line {line} after the hourly rows is not read.");
        return SeriesCompletion.Complete(series);
    }

    private WeatherSite Named() => _site with { Name = _site.Name ?? StationName() ?? _file };

    private string? StationName() => _header[ColumnRole.Station] is { } column ? _site.Station ?? _rows.Cells[0].Cells[column.Index] : null;
}
