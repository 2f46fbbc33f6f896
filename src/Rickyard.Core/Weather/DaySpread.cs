namespace Rickyard.Core.Weather;

/// <summary>
/// Spread of daily means about the usual of the date, from the climate's own annual and daily ranges (physics.md, eq. M8 to M11).
/// The first-order autoregressive form is Richardson's (1981); the numbers are our fit to 18 hourly typical years and four Irish stations of
/// 2017, by eye: a judgement.
/// </summary>
/// <param name="normals">The climate.</param>
internal sealed class DaySpread(MonthlyNormals normals)
{
    /// <summary>Day-to-day memory of temperature; 0.57 to 0.81 in the records.</summary>
    public const double TemperatureMemory = 0.65;

    /// <summary>Day-to-day memory of humidity; 0.30 to 0.65 in the records.</summary>
    public const double HumidityMemory = 0.50;

    /// <summary>Day-to-day memory of the logarithm of wind; 0.28 to 0.51 in the records.</summary>
    public const double WindMemory = 0.42;

    /// <summary>Standard deviation of the logarithm of daily mean wind; 0.30 to 0.57 in the records.</summary>
    public const double Wind = 0.38;

    /// <summary>By how much wet days are more humid than dry ones; 0.04 to 0.14 in the records.</summary>
    public const double WetDayHumidity = 0.08;

    /// <summary>Sun of a wet day over that of a dry one; 0.59 to 0.73 in the records.</summary>
    public const double WetDaySun = 0.66;

    private readonly double[] _means = [.. normals.Months.Select(month => (month.HighCelsius + month.LowCelsius) / 2)];
    private readonly double _dailyRange = normals.Months.Average(month => month.HighCelsius - month.LowCelsius);

    /// <summary>Standard deviation of daily mean temperature in a month, larger in winter. [K]</summary>
    /// <param name="month">0 to 11.</param>
    public double Temperature(int month) => (0.8 + 0.14 * AnnualRange) * (1 + 0.28 * Winter(month));

    /// <summary>
    /// Range of the average day over mean high minus mean low, since highs and lows fall at odd hours: 0.6 in winter to 0.85 in summer in the
    /// records. Used when days differ; without that the full range stands in for it.
    /// </summary>
    /// <param name="month">0 to 11.</param>
    public double RangeShare(int month) => 0.73 - 0.12 * Winter(month);

    /// <summary>Standard deviation of daily mean relative humidity, wet and dry days together; larger where days are far warmer than nights.</summary>
    public double Humidity => Math.Clamp(0.011 * _dailyRange, 0.04, 0.18);

    private double AnnualRange => _means.Max() - _means.Min();

    /// <summary>1 in the coldest month, -1 in the warmest.</summary>
    private double Winter(int month) => AnnualRange > 0 ? (_means.Max() + _means.Min() - 2 * _means[month]) / AnnualRange : 0;
}
