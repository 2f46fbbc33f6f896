using System.Globalization;
using Rickyard.Core.Tables;

namespace Rickyard.Core.Measuring.Meters;

/// <summary>The published resistance rows, by name.</summary>
public static class ResistanceTable
{
    private const int FirstPercent = 7, LastPercent = 25;

    /// <summary>All rows.</summary>
    public static IReadOnlyList<ResistanceCurve> All { get; } = [.. DataRow.Read("Measuring/pin_resistance").Select(Row), .. European()];

    /// <summary>A row by name, or null.</summary>
    public static ResistanceCurve? Find(string name) => All.FirstOrDefault(row => row.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    private static ResistanceCurve Row(DataRow row)
    {
        var cells = Enumerable.Range(FirstPercent, LastPercent - FirstPercent + 1)
            .Select(percent => (Moisture: percent / 100.0, Megohm: row.NumberOrNull(percent.ToString(CultureInfo.InvariantCulture))))
            .Where(cell => cell.Megohm is not null).ToArray();
        return new(row.Text("name"), row.Text("group"), [.. cells.Select(cell => cell.Moisture)], [.. cells.Select(cell => cell.Megohm!.Value)], row.Text("mark"), row.Text("note"));
    }

    /// <summary>
    /// log10(log10 R + 1) = a M + b, R in megohm and M in % (Forsén and Tarvainen 2000, VTT Publications 420, Table 5; second-hand), measured at 8 to 18 % and about 20 °C.
    /// </summary>
    private static IEnumerable<ResistanceCurve> European() => [Equation("European oak", -0.047, 1.079), Equation("European beech", -0.046, 1.119)];

    private static ResistanceCurve Equation(string name, double a, double b)
    {
        double[] percents = [.. Enumerable.Range(0, 4 * (30 - FirstPercent) + 1).Select(quarter => FirstPercent + quarter / 4.0)];
        return new(
            name, "hardwood", [.. percents.Select(percent => percent / 100)], [.. percents.Select(percent => Math.Pow(10, Math.Pow(10, a * percent + b) - 1))],
            "text (second-hand)", "measured at 8 to 18 % and about 20 °C; above that carried on");
    }
}
