using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Core.Learning;

/// <summary>A forecast that has learnt from observations, with all that made it. All arrays run along <see cref="Days"/>.</summary>
public sealed record LearningRun
{
    /// <summary>The case.</summary>
    public required DryingCase Case { get; init; }

    /// <summary>Report times from the start. [d]</summary>
    public required double[] Days { get; init; }

    /// <summary>Day the forecast starts from. [d]</summary>
    public required double Today { get; init; }

    /// <summary>A tenth of the lot's splits are below this, at each time.</summary>
    public required MoistureSeries LowTenth { get; init; }

    /// <summary>Half of them.</summary>
    public required MoistureSeries Median { get; init; }

    /// <summary>Nine tenths.</summary>
    public required MoistureSeries HighTenth { get; init; }

    /// <summary>Core of the lot's middle split: how sure we are of the lot itself, the spread between its splits left out. [kg kg⁻¹]</summary>
    public required IReadOnlyList<Spread> LotCore { get; init; }

    /// <summary>Core of a split as the case alone would have it, before any observation. [kg kg⁻¹]</summary>
    public required IReadOnlyList<Spread> CoreBefore { get; init; }

    /// <summary>Part of the splits whose core is in the cook's band, with its uncertainty, 0 to 1.</summary>
    public required IReadOnlyList<Spread> ShareInBand { get; init; }

    /// <summary>When the lot's middle split is in the band.</summary>
    public required ReadyWindow LotWindow { get; init; }

    /// <summary>When a split drawn from the lot is in the band.</summary>
    public required ReadyWindow Window { get; init; }

    /// <summary>The same before any observation.</summary>
    public required ReadyWindow WindowBefore { get; init; }

    /// <summary>When the middle split would have been in the band, before any observation.</summary>
    public required ReadyWindow LotWindowBefore { get; init; }

    /// <summary>Marked splits.</summary>
    public required IReadOnlyList<PieceForecast> Pieces { get; init; }

    /// <summary>What was learnt.</summary>
    public required IReadOnlyList<LearntUnknown> Unknowns { get; init; }

    /// <summary>Every observation beside what was expected.</summary>
    public required IReadOnlyList<ObservationFit> Observations { get; init; }

    /// <summary>Readings that could be taken today, the most telling first.</summary>
    public required IReadOnlyList<ReadingGain> Next { get; init; }

    /// <summary>How many splits to probe.</summary>
    public required ProbeCount Probe { get; init; }

    /// <summary>Where part of the lot is too dry; null otherwise.</summary>
    public OverDry? OverDry { get; init; }

    /// <summary>The classes of a charge in a hot box, where there are several; the figures here are then those of the first.</summary>
    public IReadOnlyList<ClassLearning> Classes { get; init; } = [];

    /// <summary>How far to trust this.</summary>
    public required LearningHealth Health { get; init; }

    /// <summary>Equilibrium moisture of the air, of the typical run. [kg kg⁻¹]</summary>
    public required double[] AirEquilibrium { get; init; }

    /// <summary>Sentences on weather, gaps filled, rules taken.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The request.</summary>
    public required LearningRequest Request { get; init; }

    /// <summary>Version of the model and its constants.</summary>
    public required string ModelVersion { get; init; }

    /// <summary>Wall time, set by whoever holds the clock. [s]</summary>
    public double Seconds { get; init; }
}
