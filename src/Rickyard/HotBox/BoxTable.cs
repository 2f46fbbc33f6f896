using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>The box itself in about ten rows, first and last report among them.</summary>
internal static class BoxTable
{
    private const int Rows = 10;

    public static IReadOnlyList<string> Heads { get; } = ["day", "air °C", "humidity %", "walls °C", "heater kW", "water off kg", "bought kWh"];

    public static IEnumerable<IReadOnlyList<string>> Of(DryingRun run, BoxSeries box)
    {
        var last = run.Days.Length - 1;
        return Enumerable.Range(0, Rows).Select(row => (int)Math.Round((double)row * last / (Rows - 1))).Distinct().Select(report => Row(run, box, report));
    }

    private static IReadOnlyList<string> Row(DryingRun run, BoxSeries box, int report) =>
    [
        new RunClock(run).DayNumber(run.Days[report]), Invariant($"{box.AirCelsius[report]:0.0}"), Invariant($"{100 * box.AirHumidity[report]:0}"),
        Invariant($"{box.WallCelsius[report]:0.0}"), Invariant($"{box.HeaterWatts[report] / 1000:0.00}"), Invariant($"{box.WaterKilograms[report]:0.0}"),
        Invariant($"{EnergySentences.Kilowatthours(box.EnergyJoules[report]):0.0}"),
    ];
}
