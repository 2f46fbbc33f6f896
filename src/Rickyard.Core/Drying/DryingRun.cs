using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;

namespace Rickyard.Core.Drying;

/// <summary>The answer to a case, with all that made it.</summary>
public sealed record DryingRun
{
    /// <summary>The case.</summary>
    public required DryingCase Case { get; init; }

    /// <summary>Report times from the start. [d]</summary>
    public required double[] Days { get; init; }

    /// <summary>The typical split.</summary>
    public required MoistureSeries Typical { get; init; }

    /// <summary>A tenth of the members are below this, at each time.</summary>
    public required MoistureSeries LowTenth { get; init; }

    /// <summary>Half of the members.</summary>
    public required MoistureSeries Median { get; init; }

    /// <summary>Nine tenths.</summary>
    public required MoistureSeries HighTenth { get; init; }

    /// <summary>When the core is in the band of 18 to 20 % dry basis (or the one asked for).</summary>
    public required ReadyWindow Window { get; init; }

    /// <summary>The typical split cut open at some of the report times, first and last among them.</summary>
    public required IReadOnlyList<FieldSnapshot> Snapshots { get; init; }

    /// <summary>Equilibrium moisture of the air about the wood, at each report time (mean since the report before). [kg kg⁻¹]</summary>
    public required double[] AirEquilibrium { get; init; }

    /// <summary>Share of the resistance to drying that lies in the air and surface rather than inside, at each report time, 0 to 1.</summary>
    public required double[] SurfaceShare { get; init; }

    /// <summary>The hot box and the classes in it, or null where the case has none. The series above are then those of the first class.</summary>
    public ChargeRun? Charge { get; init; }

    /// <summary>Sentences on weather, gaps filled, rules taken.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Members behind the bands.</summary>
    public required int Members { get; init; }

    /// <summary>Seed of every random draw.</summary>
    public required int Seed { get; init; }

    /// <summary>Version of the model and its constants.</summary>
    public required string ModelVersion { get; init; }

    /// <summary>Wall time of the solution, set by whoever holds the clock. [s]</summary>
    public double Seconds { get; init; }
}
