using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// Reads NOAA ISD-Lite: 61 characters a line, tenths, UTC, -9999 missing, -1 a trace of rain (NOAA, ISD-Lite format document, from memory;
/// physics.md, section 2). The file does not say where it is from.
/// </summary>
public sealed partial class IsdLiteReader
{
    private const int Width = 61;
    private readonly string _file;
    private readonly WeatherSite _site;
    private readonly ProblemList _problems;
    private readonly ReadingCheck _check = new();

    private IsdLiteReader(string file, WeatherSite site)
    {
        _file = file;
        _site = site;
        _problems = new(file);
    }

    /// <summary>The weather of an ISD-Lite file, already unpacked.</summary>
    /// <param name="file">Name of the file, for messages.</param>
    /// <param name="text">All of it.</param>
    /// <param name="site">What the person says beyond the file: here, where the station stands.</param>
    public static Result<HourlyWeather> Read(string file, string text, WeatherSite? site = null) => new IsdLiteReader(file, site ?? WeatherSite.Unknown).Run(text);

    /// <summary>Whether a line looks like ISD-Lite.</summary>
    internal static bool Recognises(string line) => FirstColumns().IsMatch(line);

    private Result<HourlyWeather> Run(string text)
    {
        var samples = new List<WeatherSample>();
        var number = 0;
        foreach (var line in text.Split('\n').Select(line => line.TrimEnd('\r', ' ')))
        {
            number++;
            if (line.Length == 0) continue;
            if (line.Length != Width) _problems.Add(
                number,
                $"It has {line.Length} characters; a line of ISD-Lite has {Width}.",
                "The line is cut or the file is mixed with another: fetch it again.");
            else if (Numbers(line) is not { } numbers) _problems.Add(
                number,
                $"'{line[..13]}...' is not a date and eight whole numbers.",
                "Fetch the file again.");
            else samples.Add(Sample(numbers, number));
        }

        samples.Sort((left, right) => left.At.CompareTo(right.At));
        if (!_problems.Any) HourlyAxis.CheckSpan(samples[0].At, samples[^1].At, _problems);
        if (_problems.Any) return _problems.Failure();
        var series = new ObservedSeries(_file, HourlyAxis.Start(samples), (int)HourlyAxis.Span(samples)) { Site = _site with { Name = _site.Name ?? _file }, Source = "NOAA NCEI, ISD-Lite; US stations are in the public domain." };
        series.Notes.Add("Humidity is computed from the dew point.");
        if (_site.Longitude is null) series.Notes.Add("Times are UTC, since the file does not say where it was measured.");
        HourlyAxis.Place(samples, series);
        series.Notes.AddRange(_check.Notes());
        return SeriesCompletion.Complete(series);
    }

    /// <summary>Year, month, day, hour and the eight values; null when one is no number or the date does not exist.</summary>
    private static int[]? Numbers(string line)
    {
        var texts = new[] { line[..4], line[5..7], line[8..10], line[11..13] }.Concat(Enumerable.Range(0, 8).Select(field => line.Substring(13 + 6 * field, 6)));
        var numbers = texts.Select(text => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number : int.MinValue).ToArray();
        return numbers.All(number => number > int.MinValue) && numbers[0] is > 1800 and < 2200 && numbers[1] is >= 1 and <= 12
            && numbers[2] >= 1 && numbers[2] <= CalendarSystem.Iso.GetDaysInMonth(numbers[0], numbers[1]) && numbers[3] is >= 0 and <= 23 ? numbers : null;
    }

    private WeatherSample Sample(int[] numbers, int line)
    {
        double? Tenths(int field) => numbers[4 + field] == -9999 ? null : numbers[4 + field] / 10.0;
        var celsius = _check.Celsius(Tenths(0), line);
        return new(
            new LocalDateTime(numbers[0], numbers[1], numbers[2], numbers[3], 0).PlusHours((long)Math.Round((_site.Longitude ?? 0) / 15)),
            line,
            celsius,
            Humidity.FromDewPoint(celsius, _check.Celsius(Tenths(1), line)),
            _check.Wind(Tenths(4), line),
            Tenths(6) is { } rain ? _check.Rain(Math.Max(0, rain), line) : null,
            null,
            _check.Pressure(Tenths(2) is { } hectopascals ? StationPressure.FromSeaLevel(_site.ElevationMetres ?? 0, 100 * hectopascals) : null, line));
    }

    [GeneratedRegex(@"^\d{4} (0\d|1[0-2]) ([0-2]\d|3[01]) ([01]\d|2[0-3]) [-\d ]{5} ")]
    private static partial Regex FirstColumns();
}
