using System.Globalization;
using System.Text.Json;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Benchmarks;

/// <summary>
/// Solves comparison problem A or B and prints one JSON line: the median of repeated solves after warm-up. As in the C program, geometry and work arrays
/// are made once, and everything that belongs to a solution (the running sums of the air among it) every time.
/// </summary>
internal sealed class WedgeRace
{
    private const double SecondsPerDay = 86400, Start = 50;
    private readonly string _problem;
    private readonly LaneGrid _grid;
    private readonly ReferenceWedgeLaw _law;
    private readonly AdaptiveDriver _driver;

    private WedgeRace(string problem, double tolerance)
    {
        _problem = problem;
        _grid = new LaneGrid(SplitGrid.Uniform(Split.Wedge(Length.FromMetres(0.10), Angle.FromDegrees(60), Length.FromMetres(0.36)), 14, 8, 12));
        _law = new(_grid);
        _driver = new(_grid, _law, new(10 * tolerance, tolerance, 30, (problem == "A" ? 24 : 6) * 3600, AllowNegative: true));
    }

    /// <summary>Solve the problem over and over and print the median time and the answer.</summary>
    /// <param name="problem">A or B.</param>
    /// <param name="tolerance">Relative; a tenth of it is absolute.</param>
    /// <param name="repeats">Solves after warm-up.</param>
    public static void Run(string problem, double tolerance, int repeats)
    {
        var race = new WedgeRace(problem, tolerance);
        var answer = race.Solve();
        var seconds = Timing.Median(repeats, () => answer = race.Solve());
        Console.WriteLine(JsonSerializer.Serialize(new
        {
            problem,
            grid = new[] { 14, 8, 12 },
            rtol = tolerance,
            seconds = Math.Round(seconds, 6),
            evaluations = answer.Evaluations,
            days = answer.Days,
            mean = answer.Mean.Select(m => Math.Round(m, 3)),
            core = answer.Core.Select(m => Math.Round(m, 3)),
        }));
    }

    /// <summary>Median time of a solve. [s]</summary>
    /// <param name="problem">A or B.</param>
    /// <param name="tolerance">Relative.</param>
    /// <param name="repeats">Solves after warm-up.</param>
    public static double Seconds(string problem, double tolerance, int repeats)
    {
        var race = new WedgeRace(problem, tolerance);
        return Timing.Median(repeats, () => race.Solve());
    }

    private WedgeAnswer Solve()
    {
        var (every, reports, last) = _problem == "A" ? (2, 8, 14) : (30, 13, 365);
        _law.Restart(_problem == "A" ? new SteadyReferenceAir() : new SeasonalReferenceAir(last));
        _driver.Restart(0);
        Array.Fill(_driver.Stepper.State, Start);
        double[] days = new double[reports], means = new double[reports], cores = new double[reports];
        var core = _grid.Layout.Index((int)(14 * 0.62), 0, 0);
        for (var report = 0; report < reports; report++)
        {
            days[report] = report * every;
            Advance(days[report]);
            (means[report], cores[report]) = (Mean(_driver.Stepper.State, _grid.Volumes), _driver.Stepper.State[core]);
        }

        Advance(last);
        return new(days, means, cores, 2 * (_driver.Accepted + _driver.Rejected));
    }

    private void Advance(double day)
    {
        while (_driver.Time < day * SecondsPerDay) _driver.Advance(day * SecondsPerDay);
    }

    private static double Mean(double[] state, double[] volumes)
    {
        double sum = 0, total = 0;
        for (var i = 0; i < state.Length; i++) (sum, total) = (sum + state[i] * volumes[i], total + volumes[i]);
        return sum / total;
    }

    private sealed record WedgeAnswer(double[] Days, double[] Mean, double[] Core, int Evaluations);
}
