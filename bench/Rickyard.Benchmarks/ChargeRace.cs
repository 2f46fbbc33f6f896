using System.Text.Json;
using NodaTime;
using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Benchmarks;

/// <summary>
/// Two weeks of six classes of split in a hot box, their air coupled, at the default grid and steps, against problem A in the same run. Prints one JSON line.
/// </summary>
internal static class ChargeRace
{
    private const double Days = 14;

    /// <summary>Run and report.</summary>
    /// <param name="repeats">Solves of each after warm-up.</param>
    internal static void Run(int repeats)
    {
        BoxTrace trace = Solve();
        double charge = Timing.Median(repeats, () => trace = Solve()), setup = Timing.Median(repeats, () => Setup()), wedge = WedgeRace.Seconds("A", 3e-3, repeats);
        Console.WriteLine(JsonSerializer.Serialize(new
        {
            classes = trace.Typical.Count,
            days = Days,
            charge_ms = Math.Round(1e3 * charge, 2),
            of_that_grids_and_tables_ms = Math.Round(1e3 * setup, 2),
            wedge_ms = Math.Round(1e3 * wedge, 2),
            ratio = Math.Round(charge / wedge, 1),
            steps = trace.Steps.Accepted,
            rejected = trace.Steps.Rejected,
        }));
    }

    private static BoxTrace Solve() => Setup().Run(new HashSet<int>(), CancellationToken.None);

    private static BoxRun Setup()
    {
        double[] days = [.. Enumerable.Range(0, (int)Days + 1).Select(day => (double)day)];
        BoxPlan plan = new() { Box = Cabinet, Ambient = new(15, 0.6), Stages = [new(StageKind.Drying, null, 65)] };
        return new BoxRun(plan, Charge, OutsideSeries.Steady(15, 0.6), days, GridResolution.Default, StepControl.Forecast);
    }

    private static BoxDescription Cabinet { get; } = new()
    {
        Volume = 0.6,
        WallArea = 4.4,
        Height = 1.5,
        WallConductance = 1.5,
        WallHeatCapacity = 8000,
        Heater = new(2000, 4, 0, HeaterFuel.Electricity, 1),
        Fan = new(0.5, 0.05, 30),
        Vent = new(0, 0.004, null),
        LeakOpening = 0.001,
    };

    private static IReadOnlyList<ChargeClass> Charge { get; } = [.. new[] { 0.05, 0.06, 0.07, 0.08, 0.1, 0.12 }.Select((radius, i) => Class(radius, 20 - 3 * i, (ShelfPlace)(i % 3)))];

    private static ChargeClass Class(double radius, int pieces, ShelfPlace shelf)
    {
        var wood = SpeciesCatalogue.Find("northern red oak").Value!;
        return new($"{radius}", new()
        {
            Name = "oak",
            Species = wood,
            BasicDensity = wood.BasicDensity.Value.KilogramsPerCubicMetre,
            Split = Split.Wedge(Length.FromMetres(radius), Angle.FromDegrees(60), Length.FromMetres(0.4)),
            Start = new(0.6, null, null, false, 10, new LocalDate(2026, 1, 1)),
            Periods = [],
            Days = Days,
            ReportEvery = 1,
        }, pieces, shelf, 0.8);
    }
}
