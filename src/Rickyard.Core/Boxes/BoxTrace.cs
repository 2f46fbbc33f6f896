using Rickyard.Core.Drying;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Boxes;

/// <summary>A box and its charge run once, typical splits only.</summary>
public sealed class BoxTrace
{
    /// <summary>Report times. [d]</summary>
    public required double[] Days { get; init; }

    /// <summary>The box.</summary>
    public required BoxSeries Series { get; init; }

    /// <summary>Where the heat went.</summary>
    public required EnergyUse Use { get; init; }

    /// <summary>What held it back.</summary>
    public required IReadOnlyList<StageLimit> Limits { get; init; }

    /// <summary>The typical split of each class.</summary>
    public required IReadOnlyList<MoistureSeries> Typical { get; init; }

    /// <summary>Air that each class met, step by step.</summary>
    public required IReadOnlyList<AirSeries> Air { get; init; }

    /// <summary>Grid of each class.</summary>
    public required IReadOnlyList<SplitGrid> Grids { get; init; }

    /// <summary>Moisture of every cell of the first class at the reports asked for.</summary>
    public required IReadOnlyList<FieldSnapshot> Snapshots { get; init; }

    /// <summary>Water that dripped off. [kg]</summary>
    public required double DripKilograms { get; init; }

    /// <summary>Equilibrium moisture of the box's air, at each report. [kg kg⁻¹]</summary>
    public required double[] AirEquilibrium { get; init; }

    /// <summary>Part of the resistance outside the wood since the report before, 0 to 1.</summary>
    public required double[] SurfaceShare { get; init; }

    /// <summary>How far water and heat of the whole box fail to close, of what moved.</summary>
    public required (double Water, double Heat) Unclosed { get; init; }

    /// <summary>Steps accepted and rejected.</summary>
    public required (int Accepted, int Rejected) Steps { get; init; }
}
