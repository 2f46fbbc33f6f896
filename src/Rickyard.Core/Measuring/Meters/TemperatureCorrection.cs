namespace Rickyard.Core.Measuring.Meters;

/// <summary>What temperature asks to be added to a reading: the middle of the published corrections and how far they disagree.</summary>
/// <param name="Best">Mean of the methods, each counted from 80 °F, where the resistance table was measured. [points]</param>
/// <param name="Least">Least of all methods, counted from 80 °F or from their own zero. [points]</param>
/// <param name="Most">Most of them. [points]</param>
public readonly record struct TemperatureCorrection(double Best, double Least, double Most)
{
    /// <summary>Wood temperature of the resistance table, 80 °F (James 1988, Table 1, footnote 1). [°C]</summary>
    public const double TableCelsius = 26.7;

    /// <summary>Of a reading.</summary>
    /// <param name="reading">As shown, in percent of the meter's scale. [%]</param>
    /// <param name="celsius">Of the wood. [°C]</param>
    public static TemperatureCorrection Of(double reading, double celsius)
    {
        double[] own = [.. TemperatureMethods.All.Select(method => method.Add(reading, celsius))];
        double[] counted = [.. TemperatureMethods.All.Select((method, i) => own[i] - method.Add(reading, TableCelsius))];
        // The two ends of one publication count as one method.
        var best = (counted[0] + counted[1] + counted[2] + (counted[3] + counted[4]) / 2) / 4;
        return new(best, Math.Min(own.Min(), counted.Min()), Math.Max(own.Max(), counted.Max()));
    }
}
