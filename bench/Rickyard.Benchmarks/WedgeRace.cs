using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Benchmarks;

/// <summary>Solves comparison problem A or B and prints one JSON line: the median of repeated solves after warm-up.</summary>
internal static class WedgeRace
{
    public static void Run(string problem, double tolerance, int repeats)
    {
        double[] times = new double[repeats];
        WedgeAnswer answer = Solve(problem, tolerance);
        for (var warm = Stopwatch.StartNew(); warm.ElapsedMilliseconds < 1500;) Solve(problem, tolerance);
        for (var i = 0; i < repeats; i++)
        {
            var watch = Stopwatch.StartNew();
            answer = Solve(problem, tolerance);
            times[i] = watch.Elapsed.TotalSeconds;
        }

        Array.Sort(times);
        Console.WriteLine(JsonSerializer.Serialize(new
        {
            problem,
            grid = new[] { 14, 8, 12 },
            rtol = tolerance,
            seconds = Math.Round(times[repeats / 2], 6),
            evaluations = answer.Evaluations,
            days = answer.Days,
            mean = answer.Mean.Select(m => Math.Round(m, 3)),
            core = answer.Core.Select(m => Math.Round(m, 3)),
        }));
    }

    private static WedgeAnswer Solve(string problem, double tolerance)
    {
        double every = problem == "A" ? 2 : 30, last = problem == "A" ? 14 : 360;
        var split = Split.Wedge(Length.FromMetres(0.10), Angle.FromDegrees(60), Length.FromMetres(0.36));
        var grid = new LaneGrid(SplitGrid.Uniform(split, 14, 8, 12));
        IReferenceAir air = problem == "A" ? new SteadyReferenceAir() : new SeasonalReferenceAir(365);
        var control = new StepControl(10 * tolerance, tolerance, 30, (problem == "A" ? 24 : 6) * 3600);
        var driver = new AdaptiveDriver(grid, new ReferenceWedgeLaw(grid, air), control);
        Array.Fill(driver.Stepper.State, 50);
        List<double> days = [], means = [], cores = [];
        var core = grid.Layout.Index((int)(14 * 0.62), 0, 0);
        for (var day = 0.0; day <= last; day += every)
        {
            while (driver.Time < day * 86400) driver.Advance(day * 86400);
            days.Add(day);
            means.Add(Mean(driver.Stepper.State, grid.Volumes));
            cores.Add(driver.Stepper.State[core]);
        }

        if (problem == "B") while (driver.Time < 365 * 86400.0) driver.Advance(365 * 86400.0);
        return new(days, means, cores, 2 * (driver.Accepted + driver.Rejected));
    }

    private static double Mean(double[] state, double[] volumes)
    {
        double sum = 0, total = 0;
        for (var i = 0; i < state.Length; i++) (sum, total) = (sum + state[i] * volumes[i], total + volumes[i]);
        return sum / total;
    }

    private sealed record WedgeAnswer(List<double> Days, List<double> Mean, List<double> Core, int Evaluations);
}
