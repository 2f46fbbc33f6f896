using NodaTime;

namespace Rickyard.Core.Weather;

/// <summary>Draws days of a climate, one after the other.</summary>
internal sealed class SyntheticDays
{
    private const double DriestDay = 0.06;
    private const double DampestDay = 0.985;

    private readonly MonthlyNormals _normals;
    private readonly WeatherVariability _variability;
    private readonly DaySpread _spread;
    private readonly AnnualCurve _high, _low, _humidity, _wind;
    private readonly WetDayChain _rain;
    private readonly DailyAnomaly _warmth, _dampness, _breeze;

    public SyntheticDays(MonthlyNormals normals, MonthlyNormals rain, int seed, WeatherVariability variability)
    {
        _normals = normals;
        _variability = variability;
        _spread = new(normals);
        _high = new([.. normals.Months.Select(month => month.HighCelsius)]);
        _low = new([.. normals.Months.Select(month => month.LowCelsius)]);
        _humidity = new([.. normals.Months.Select(month => month.RelativeHumidity)]);
        _wind = new([.. normals.Months.Select(month => month.WindSpeed)]);
        _rain = new(rain, Stream(seed, 0));
        _warmth = new(DaySpread.TemperatureMemory, Stream(seed, 1));
        _dampness = new(DaySpread.HumidityMemory, Stream(seed, 2));
        _breeze = new(DaySpread.WindMemory, Stream(seed, 3));
    }

    /// <summary>The next days.</summary>
    public SyntheticDay[] Draw(LocalDate first, int count) => [.. Enumerable.Range(0, count).Select(day => Next(TypicalCalendar.DayOf(first.PlusDays(day))))];

    private SyntheticDay Next(int day)
    {
        var month = TypicalCalendar.MonthOf(day);
        var rain = _rain.NextDay(month);
        double wetShare = _rain.WetShare(month), wet = rain.Any(hour => hour > 0) ? 1 : 0;
        double high = _high[day], low = _low[day], range = Math.Max(0, high - low);
        return new(
            (high + low) / 2 + _variability.Temperature * _spread.Temperature(month) * _warmth.Next(),
            range * (1 - Math.Min(1, _variability.Temperature) * (1 - _spread.RangeShare(month))),
            Humidity(_humidity[day], wetShare, wet),
            Math.Max(0, _wind[day]) * WindFactor(),
            Sun(day, range, wetShare, wet),
            rain);
    }

    /// <summary>Wet days are damper, the rest of the spread has memory; cut symmetrically, so that the mean is kept (eq. M9).</summary>
    private double Humidity(double usual, double wetShare, double wet)
    {
        var ofWetness = DaySpread.WetDayHumidity * (wet - wetShare);
        var rest = Math.Sqrt(Math.Max(0, Math.Pow(_spread.Humidity, 2) - Math.Pow(DaySpread.WetDayHumidity, 2) * wetShare * (1 - wetShare)));
        var room = Math.Max(0, Math.Min(usual - DriestDay, DampestDay - usual));
        return usual + Math.Clamp(_variability.Humidity * (ofWetness + rest * _dampness.Next()), -room, room);
    }

    /// <summary>Lognormal with mean 1 (eq. M10).</summary>
    private double WindFactor()
    {
        var deviation = _variability.Wind * DaySpread.Wind;
        return Math.Exp(deviation * _breeze.Next() - deviation * deviation / 2);
    }

    /// <summary>Wet days have less sun, dry ones so much more that the mean is kept (eq. M11).</summary>
    private double Sun(int day, double range, double wetShare, double wet)
    {
        var share = (wet > 0 ? DaySpread.WetDaySun : 1) / (wetShare * DaySpread.WetDaySun + 1 - wetShare);
        return DailySun.Mean(_normals.Latitude, _normals.ElevationMetres, day, range) * share;
    }

    /// <summary>Separate random streams, so that asking for more of one thing does not change another.</summary>
    private static int Stream(int seed, int number) => unchecked(seed * 16777619 + number * 1000003 + 1);
}
