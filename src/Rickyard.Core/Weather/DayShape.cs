using Rickyard.Core.Air;

namespace Rickyard.Core.Weather;

/// <summary>How temperature, humidity and wind run through a day whose extremes and means are known.</summary>
internal static class DayShape
{
    /// <summary>
    /// Erbs, Klein and Beckman 1983 (physics.md, eq. M2): deviation from the middle of high and low over their difference, hours ending
    /// 1 to 24. Mean zero, lowest at 6 h, highest at 15 h.
    /// </summary>
    private static readonly double[] Temperature = [.. Enumerable.Range(0, 24).Select(Erbs)];

    /// <summary>Wind over its daily mean, hours ending 1 to 24: averages of 18 hourly typical-year files of many climates.</summary>
    private static readonly double[] Wind =
    [
        0.86, 0.85, 0.84, 0.83, 0.82, 0.83, 0.86, 0.92, 1.00, 1.07, 1.12, 1.17, 1.22, 1.25, 1.26, 1.24, 1.18, 1.10, 1.03, 0.96, 0.93, 0.90, 0.89, 0.87,
    ];

    /// <summary>Share of the daily range by which an hour lies above the middle of high and low.</summary>
    /// <param name="hour">0 to 23, the hour that ends at <paramref name="hour"/> + 1.</param>
    public static double TemperatureAt(int hour) => Temperature[hour];

    /// <summary>Wind of an hour over the mean of the day.</summary>
    /// <param name="hour">0 to 23.</param>
    public static double WindAt(int hour) => Wind[hour];

    /// <summary>
    /// The one vapour pressure whose relative humidities over the day, cut at 1, have the given mean (physics.md, eq. M3): the water in
    /// the air changes little in a day, the temperature much. Direct where no hour is saturated, else by halving. [Pa]
    /// </summary>
    /// <param name="celsius">Temperatures of the day. [°C]</param>
    /// <param name="meanHumidity">0 to 1.</param>
    public static double VaporPressure(ReadOnlySpan<double> celsius, double meanHumidity)
    {
        Span<double> saturation = stackalloc double[24];
        for (var hour = 0; hour < celsius.Length; hour++) saturation[hour] = SaturationOverWater(celsius[hour]);
        saturation = saturation[..celsius.Length];
        var low = WithoutCut(saturation, meanHumidity);
        if (low <= MinimumOf(saturation)) return low;
        var high = MaximumOf(saturation);
        for (var halving = 0; halving < 50; halving++)
        {
            var middle = (low + high) / 2;
            if (MeanHumidity(saturation, middle) < meanHumidity) low = middle; else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Relative humidity of air at a temperature and vapour pressure, at most 1.</summary>
    public static double RelativeHumidity(double celsius, double vaporPressure) => Math.Min(1, vaporPressure / SaturationOverWater(celsius));

    /// <summary>Saturation pressure over water, as weather services use it below 0 °C too. [Pa]</summary>
    public static double SaturationOverWater(double celsius) => SaturationPressure.OverWater(celsius + Quantities.Temperature.IcePointKelvins);

    private static double MeanHumidity(ReadOnlySpan<double> saturation, double vaporPressure)
    {
        double sum = 0;
        foreach (var value in saturation) sum += Math.Min(1, vaporPressure / value);
        return sum / saturation.Length;
    }

    /// <summary>The answer where no hour is saturated; a lower bound of it elsewhere.</summary>
    private static double WithoutCut(ReadOnlySpan<double> saturation, double meanHumidity)
    {
        double sum = 0;
        foreach (var value in saturation) sum += 1 / value;
        return meanHumidity * saturation.Length / sum;
    }

    private static double MinimumOf(ReadOnlySpan<double> values)
    {
        var smallest = values[0];
        foreach (var value in values) smallest = Math.Min(smallest, value);
        return smallest;
    }

    private static double MaximumOf(ReadOnlySpan<double> values)
    {
        var largest = values[0];
        foreach (var value in values) largest = Math.Max(largest, value);
        return largest;
    }

    private static double Erbs(int hour)
    {
        var t = 2 * Math.PI * hour / 24;
        return 0.4632 * Math.Cos(t - 3.805) + 0.0984 * Math.Cos(2 * t - 0.360) + 0.0168 * Math.Cos(3 * t - 0.822) + 0.0138 * Math.Cos(4 * t - 3.513);
    }
}
