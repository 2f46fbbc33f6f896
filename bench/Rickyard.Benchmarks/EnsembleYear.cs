using System.Diagnostics;
using System.Text.Json;
using NodaTime;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Benchmarks;

/// <summary>
/// Members that differ in size, start moisture, density, rate, free water, bark and isotherm, through a year of hourly weather on a rack, at the default
/// grid: four side by side in a vector, groups over the cores. Prints one JSON line.
/// </summary>
internal static class EnsembleYear
{
    private const double SecondsPerDay = 86400, Density = 560;

    /// <summary>Run and report.</summary>
    /// <param name="members">A multiple of four.</param>
    /// <param name="cores">Threads used.</param>
    /// <param name="days">Days of weather.</param>
    /// <param name="weatherFile">An hourly weather file; without one, a synthetic year of Des Moines.</param>
    internal static void Run(int members, int cores, double days, string? weatherFile)
    {
        var (air, source) = Air(weatherFile);
        Solve(members: 8, cores, 30, air);
        var before = GC.GetTotalAllocatedBytes(precise: true);
        var watch = Stopwatch.StartNew();
        var steps = Solve(members, cores, days, air);
        var seconds = watch.Elapsed.TotalSeconds;
        Console.WriteLine(JsonSerializer.Serialize(new
        {
            members,
            days,
            cores,
            cells = SplitGrid.For(Piece()).Count,
            weather = source,
            seconds = Math.Round(seconds, 3),
            members_per_second_per_core = Math.Round(members / seconds / cores, 2),
            steps,
            megabytes_allocated = Math.Round((GC.GetTotalAllocatedBytes(precise: true) - before) / 1e6, 1),
        }));
    }

    private static Split Piece() => Split.Wedge(Length.FromMetres(0.09), Angle.FromDegrees(60), Length.FromMetres(0.406));

    private static (AirSeries Air, string Source) Air(string? weatherFile)
    {
        var weather = weatherFile is null
            ? SyntheticWeather.Year(NormalsCatalogue.Find("Des Moines, Iowa").Value!, 1, new LocalDateTime(2025, 1, 1, 0, 0), 8760)
            : WeatherReader.Read(weatherFile, WeatherText.Decode(File.ReadAllBytes(weatherFile)).Value!).Value
                ?? throw new ArgumentException($"{weatherFile} cannot be read as weather.", nameof(weatherFile));
        var piece = Piece();
        return (AirSeries.Of(RackAir.Surroundings(weather, new(), new(piece.SurfaceDiameter, piece.Length)), 3600), weather.Name);
    }

    private static long Solve(int members, int cores, double days, AirSeries air)
    {
        var groups = MemberDraw.Spread(members, 1).Chunk(LaneGrid.FullLanes).ToArray();
        var table = MobilityTable.Of(new(Density, WaterMobility.FreeWaterOf(Core.Wood.Anatomy.RingPorousOpen)));
        long steps = 0;
        Parallel.ForEach(groups, new ParallelOptions { MaxDegreeOfParallelism = cores }, group =>
        {
            var solver = new SplitSolver(
                [.. group.Select(draw => SplitGrid.For(Piece().ScaledAcross(Math.Exp(0.2 * draw.Size))))], table,
                [.. group.Select(draw => new LaneWood(Density * Math.Exp(0.08 * draw.Density), Math.Exp(0.35 * draw.Rate), Math.Exp(0.7 * draw.FreeWater)))], air);
            for (var lane = 0; lane < solver.Lanes; lane++) solver.SetMoisture(lane, [.. Enumerable.Repeat(0.75 * Math.Exp(0.1 * group[lane].Start), solver.Moisture.Length / solver.Lanes)]);
            solver.SetCelsius(5);
            solver.AdvanceTo(days * SecondsPerDay);
            Interlocked.Add(ref steps, solver.Steps.Accepted + solver.Steps.Rejected);
        });
        return steps;
    }
}
