using BenchmarkDotNet.Attributes;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Benchmarks;

/// <summary>A day of a split in steady air: one or four members, three grids (coarse, the default, twice as fine each way).</summary>
[MemoryDiagnoser]
public class StepBenchmarks
{
    private SplitSolver _solver = null!;

    /// <summary>Members side by side.</summary>
    [Params(1, 4)]
    public int Members { get; set; }

    /// <summary>Grid.</summary>
    [Params("small", "default", "large")]
    public string Grid { get; set; } = "default";

    /// <summary>Start from the same field each time.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        var resolution = Grid switch { "small" => new GridResolution(6, 5, 5, 0.004, 1.6), "large" => GridResolution.Default.Refined(2), _ => GridResolution.Default };
        var grid = SplitGrid.For(Split.Wedge(Length.FromMetres(0.09), Angle.FromDegrees(60), Length.FromMetres(0.4)), resolution);
        _solver = new(
            [.. Enumerable.Repeat(grid, Members)], MobilityTable.Of(new(560, 1e-9)), [.. Enumerable.Repeat(new LaneWood(560), Members)],
            AirSeries.Steady(new(298.15, 1500, 8)), new StepControl(1e9, 1e9, 21600, 21600));
        _solver.Moisture.Fill(0.6);
        _solver.AdvanceTo(86400);
    }

    /// <summary>Four steps of six hours.</summary>
    [Benchmark]
    public void Day() => _solver.AdvanceTo(_solver.Time + 86400);
}
