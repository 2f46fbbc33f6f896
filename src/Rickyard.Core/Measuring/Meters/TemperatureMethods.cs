using Rickyard.Core.Tables;

namespace Rickyard.Core.Measuring.Meters;

/// <summary>The published temperature corrections. They disagree, by 3 points at 0 °C and 9 at -20 °C for a reading of 20, so none is chosen (physics.md, P3 to P6).</summary>
public static class TemperatureMethods
{
    private static readonly double[] ChartCelsius, ChartPercents;
    private static readonly double[,] Chart;

    static TemperatureMethods()
    {
        var rows = DataRow.Read("Measuring/pin_temperature_chart").Select(row => (Celsius: row.Number("wood_celsius"), Percent: row.Number("indicated_pct"), Add: row.Number("add_points"))).ToArray();
        ChartCelsius = [.. rows.Select(row => row.Celsius).Distinct().Order()];
        ChartPercents = [.. rows.Select(row => row.Percent).Distinct().Order()];
        Chart = new double[ChartCelsius.Length, ChartPercents.Length];
        foreach (var row in rows) Chart[Array.IndexOf(ChartCelsius, row.Celsius), Array.IndexOf(ChartPercents, row.Percent)] = row.Add;
        All = [PfaffGarrahan, James, Rule, ForsenTarvainenLow, ForsenTarvainenHigh];
    }

    /// <summary>
    /// {R + 0.567 - 0.0260 T + 0.000051 T²} / {0.881 · 1.0056^T} (Pfaff and Garrahan 1986, Forest Products Journal 36(3): 28; equation confirmed second-hand).
    /// </summary>
    public static TemperatureMethod PfaffGarrahan { get; } = new(
        "Pfaff and Garrahan 1986", 22.7, "text (second-hand)",
        (reading, celsius) => (reading + 0.567 - 0.0260 * celsius + 0.000051 * celsius * celsius) / (0.881 * Math.Pow(1.0056, celsius)) - reading);

    /// <summary>Chart of James 1988, FPL-GTR-6, Figure 5, for meters calibrated at 70 °F; straight between its digitised points, held beyond them.</summary>
    public static TemperatureMethod James { get; } = new("James 1988, Figure 5", 21.1, "text (second-hand)", (reading, celsius) => OnChart(celsius, reading));

    /// <summary>One point for each 20 °F from 70 °F (Wengert, text).</summary>
    public static TemperatureMethod Rule { get; } = new("1 point for each 20 °F (Wengert)", 21.1, "text", (_, celsius) => (70 - (celsius * 9 / 5 + 32)) / 20);

    /// <summary>0.10 points for each kelvin from 20 °C (Forsén and Tarvainen 2000, VTT Publications 420, abstract), their lower end.</summary>
    public static TemperatureMethod ForsenTarvainenLow { get; } = new("Forsén and Tarvainen 2000, low", 20, "text", (_, celsius) => 0.10 * (20 - celsius));

    /// <summary>0.15 points, their upper end.</summary>
    public static TemperatureMethod ForsenTarvainenHigh { get; } = new("Forsén and Tarvainen 2000, high", 20, "text", (_, celsius) => 0.15 * (20 - celsius));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TemperatureMethod> All { get; }

    private static double OnChart(double celsius, double percent)
    {
        var (t, p) = (Place(ChartCelsius, celsius), Place(ChartPercents, percent));
        double At(int i, int j) => Chart[i, j];
        return (1 - t.Part) * ((1 - p.Part) * At(t.Low, p.Low) + p.Part * At(t.Low, p.Low + 1))
            + t.Part * ((1 - p.Part) * At(t.Low + 1, p.Low) + p.Part * At(t.Low + 1, p.Low + 1));
    }

    private static (int Low, double Part) Place(double[] rising, double at)
    {
        var held = Math.Clamp(at, rising[0], rising[^1]);
        var low = Math.Min(rising.Length - 2, Array.FindLastIndex(rising, one => one <= held));
        return (low, (held - rising[low]) / (rising[low + 1] - rising[low]));
    }
}
