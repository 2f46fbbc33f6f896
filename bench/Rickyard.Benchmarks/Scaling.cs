using System.Diagnostics;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Benchmarks;

/// <summary>Wall time against cells, members and hours: doubling one should double the time, at the same number of steps for cells and members.</summary>
internal static class Scaling
{
    private const double StepSeconds = 6 * 3600;

    internal static void Run()
    {
        Console.WriteLine("| cells | members | hours | ms (median of 5) | ns per cell, member and step |");
        Console.WriteLine("|---:|---:|---:|---:|---:|");
        foreach (var cells in new[] { 1, 2, 4, 8 }) Report(cells, 4, 4000);
        foreach (var members in new[] { 4, 8, 16, 32 }) Report(1, members, 4000);
        foreach (var hours in new[] { 2000, 4000, 8000, 16000 }) Report(1, 4, hours);
    }

    private static void Report(int times, int members, double hours)
    {
        var grid = SplitGrid.Uniform(Split.Wedge(Length.FromMetres(0.09), Angle.FromDegrees(60), Length.FromMetres(0.4)), 10, 8, 8 * times);
        Solve(grid, members, hours);
        var samples = Enumerable.Range(0, 5).Select(_ => Solve(grid, members, hours)).Order().ToArray();
        var steps = hours * 3600 / StepSeconds;
        Console.WriteLine(FormattableString.Invariant(
            $"| {grid.Count} | {members} | {hours:0} | {1e3 * samples[2]:0.0} | {1e9 * samples[2] / (grid.Count * members * steps):0} |"));
    }

    /// <summary>Steps of fixed length, so that what is measured is the work of a step.</summary>
    private static double Solve(SplitGrid grid, int members, double hours)
    {
        var watch = Stopwatch.StartNew();
        for (var first = 0; first < members; first += LaneGrid.FullLanes)
        {
            SplitGrid[] grids = [grid, grid, grid, grid];
            LaneWood wood = new(560);
            var solver = new SplitSolver(
                grids, MobilityTable.Of(new(560, 1e-9)), [wood, wood, wood, wood], AirSeries.Steady(new(298.15, 1500, 8)), new StepControl(1e9, 1e9, StepSeconds, StepSeconds));
            solver.Moisture.Fill(0.6);
            solver.AdvanceTo(hours * 3600);
        }

        return watch.Elapsed.TotalSeconds;
    }
}
