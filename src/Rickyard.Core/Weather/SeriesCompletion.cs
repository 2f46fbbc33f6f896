using NodaTime;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>
/// Makes complete weather of what a file gave, by the stated rules (<see cref="GapFilling"/>, <see cref="RainSource"/>), says what was
/// filled and how much of it, and refuses what would be mostly invention.
/// </summary>
internal sealed class SeriesCompletion
{
    /// <summary>Wind taken where none is measured and no known place is near: a common mean over open ground, a judgement. [m s⁻¹]</summary>
    private const double AssumedWind = 3;

    /// <summary>A rain column that stays at zero this long holds no rain gauge. [h]</summary>
    private const int DryHoursNotBelieved = 180 * 24;

    private const double StrangeJump = 15;

    private readonly ObservedSeries _series;
    private readonly List<Problem> _problems = [];
    private readonly List<string> _notes;

    private SeriesCompletion(ObservedSeries series)
    {
        _series = series;
        _notes = [.. series.Notes];
    }

    /// <summary>The complete weather, or what keeps it from being made.</summary>
    public static Result<HourlyWeather> Complete(ObservedSeries series) => new SeriesCompletion(series).Run();

    private WeatherSite Site => _series.Site;

    private Result<HourlyWeather> Run()
    {
        Fill(_series.Celsius, "temperature");
        if (_problems.Count > 0) return ResultOf.Failure<HourlyWeather>(_problems);
        FillHumidity();
        FillWind();
        FillPressure();
        FillSun();
        if (_problems.Count > 0) return ResultOf.Failure<HourlyWeather>(_problems);
        FillRain();
        if (_problems.Count > 0) return ResultOf.Failure<HourlyWeather>(_problems);
        NoteJumps();
        if (!Site.Placed) _notes.Add("The file does not say where it was measured.");
        return ResultOf.Success(Weather());
    }

    private void Fill(double?[] values, string what)
    {
        var missing = values.Count(value => value is null);
        if (missing == 0) return;
        if (missing > GapFilling.LargestShare * values.Length)
        {
            Refuse(FormattableString.Invariant($"The {what} is missing in {missing} of {values.Length} hours; at most {100 * GapFilling.LargestShare:0} % may be filled."));
            return;
        }

        var report = GapFilling.Fill(values);
        if (!report.Complete)
        {
            Refuse($"The {what} is missing for {report.OpenLength} hours from {HourlyWeather.Say(_series.Start.PlusHours(report.OpenFrom))}; gaps of up to {GapFilling.NeighbourHours} hours are filled.");
            return;
        }

        _notes.Add($"{what[..1].ToUpperInvariant()}{what[1..]} missing in {missing} of {values.Length} hours: {report.Straight} filled along a straight line, {report.Neighbours} from the same hour of neighbouring days.");
    }

    private void Refuse(string whatIsWrong) => _problems.Add(new(_series.File, whatIsWrong, "Give a file without that gap, or a shorter period, or monthly normals."));

    /// <summary>Without any humidity the dew point is taken as the low of the day: fair where it is humid, several kelvins too high where it is dry.</summary>
    private void FillHumidity()
    {
        if (_series.RelativeHumidity.Any(value => value is not null))
        {
            Fill(_series.RelativeHumidity, "relative humidity");
            return;
        }

        for (var from = 0; from < _series.Count; from += 24)
        {
            var day = Enumerable.Range(from, Math.Min(24, _series.Count - from)).ToArray();
            var vapor = DayShape.SaturationOverWater(day.Min(hour => _series.Celsius[hour]!.Value));
            foreach (var hour in day) _series.RelativeHumidity[hour] = DayShape.RelativeHumidity(_series.Celsius[hour]!.Value, vapor);
        }

        _notes.Add("No humidity in the file: the dew point is taken as the low of each day, which is fair in humid climates and too damp in dry ones.");
    }

    private void FillWind()
    {
        if (_series.WindSpeed.Any(value => value is not null))
        {
            Fill(_series.WindSpeed, "wind");
            return;
        }

        var near = Site.Placed ? NormalsCatalogue.Nearest(Site.Latitude!.Value, Site.Longitude!.Value) : default;
        var usable = near.Place is not null && near.Kilometres <= RainSource.NearKilometres;
        var curve = new AnnualCurve(usable ? [.. near.Place!.Months.Select(month => month.WindSpeed)] : Enumerable.Repeat(AssumedWind, 12).ToArray());
        for (var hour = 0; hour < _series.Count; hour++)
        {
            var time = _series.Start.PlusHours(hour);
            _series.WindSpeed[hour] = curve[TypicalCalendar.DayOf(time.Date)] * DayShape.WindAt(time.Hour);
        }

        _notes.Add(usable
            ? FormattableString.Invariant($"No wind in the file: the monthly mean wind of {near.Place!.Name}, {near.Kilometres:0} km away, is used.")
            : FormattableString.Invariant($"No wind in the file and no known place near: a mean of {AssumedWind:0} m/s is supposed."));
    }

    private void FillPressure()
    {
        var pressure = _series.StationPressure;
        if (pressure.Any(value => value is not null)) GapFilling.Fill(pressure);
        var usual = StationPressure.At(Site.ElevationMetres ?? 0);
        for (var hour = 0; hour < pressure.Length; hour++) pressure[hour] ??= usual;
    }

    private void FillSun()
    {
        var sun = _series.GlobalSun;
        var missing = sun.Count(value => value is null);
        if (missing > 0 && missing < sun.Length) GapFilling.Fill(sun);
        if (sun.All(value => value is not null)) return;
        if (Site.Latitude is not { } latitude)
        {
            for (var hour = 0; hour < sun.Length; hour++) sun[hour] ??= 0;
            _notes.Add("No sun in the file, and no latitude to estimate it from: sun is left out, so racks in the sun will dry faster than forecast.");
            return;
        }

        for (var from = 0; from < sun.Length; from += 24) EstimateSun(from, latitude);
        _notes.Add($"Sun missing in {missing} of {sun.Length} hours: estimated from latitude and the daily range of temperature (FAO-56).");
    }

    private void EstimateSun(int from, double latitude)
    {
        var day = _series.Celsius.Skip(from).Take(24).Select(value => value!.Value).ToArray();
        for (var hour = from; hour < Math.Min(from + 24, _series.Count); hour++)
        {
            var time = _series.Start.PlusHours(hour);
            var date = TypicalCalendar.DayOf(time.Date);
            var mean = DailySun.Mean(latitude, Site.ElevationMetres ?? 0, date, day.Max() - day.Min());
            _series.GlobalSun[hour] ??= mean * DailySun.HourFactor(latitude, date, time.Hour);
        }
    }

    private void FillRain()
    {
        var rain = _series.Rain;
        var missing = rain.Count(value => value is null);
        var dry = missing == 0 && rain.Length >= DryHoursNotBelieved && rain.All(value => value == 0);
        if (missing == 0 && !dry) return;
        if (StandInForRain() is not { } source) return;
        var drawn = SyntheticWeather.Rain(source.Normals, seed: 1, _series.Start, rain.Length);
        for (var hour = 0; hour < rain.Length; hour++) rain[hour] = dry ? drawn[hour] : rain[hour] ?? drawn[hour];
        _notes.Add((dry ? $"Rain is zero in all {rain.Length} hours, which is taken as not measured." : $"Rain is missing in {missing} of {rain.Length} hours.") + $" {source.Note}");
    }

    private RainSource? StandInForRain()
    {
        if (!Site.Placed)
        {
            _problems.Add(new(
                _series.File,
                "Rain is missing, and the file does not say where it was measured.",
                "Say where (latitude and longitude, or a known place), so that rain can be drawn from the nearest monthly normals."));
            return null;
        }

        var near = RainSource.Near(Site.Latitude!.Value, Site.Longitude!.Value);
        if (near is not null) return near;
        if (MonthlyNormals.FromHours(Weather()).TryGet(out var own)) return RainSource.Alike(own);
        _problems.Add(new(
            _series.File,
            $"Rain is missing, and no place with known rain lies within {RainSource.NearKilometres} km.",
            "Give a file with rain, or a full year, so that a place of like climate can be found."));
        return null;
    }

    private void NoteJumps()
    {
        var jumps = Enumerable.Range(1, _series.Count - 1).Where(hour => Math.Abs(_series.Celsius[hour]!.Value - _series.Celsius[hour - 1]!.Value) > StrangeJump).ToList();
        if (jumps.Count == 0) return;
        _notes.Add($"Temperature jumps by more than {StrangeJump} K within an hour {jumps.Count} times, first on {HourlyWeather.Say(_series.Start.PlusHours(jumps[0]))}; kept, but look at it.");
    }

    private HourlyWeather Weather() => new(
        Site.Name ?? _series.File,
        Site.Latitude ?? double.NaN,
        Site.Longitude ?? double.NaN,
        Site.ElevationMetres ?? 0,
        _series.Start,
        [.. Enumerable.Range(0, _series.Count).Select(Hour)],
        _notes,
        _series.Source,
        _series.Typical);

    private WeatherHour Hour(int hour) => new(
        _series.Celsius[hour]!.Value,
        _series.RelativeHumidity[hour]!.Value,
        _series.WindSpeed[hour]!.Value,
        _series.GlobalSun[hour]!.Value,
        _series.Rain[hour] ?? 0,
        _series.StationPressure[hour]!.Value);
}
