namespace Rickyard.Core.Drying;

/// <summary>How a case is to be run.</summary>
/// <param name="Members">Members of the ensemble behind the bands; a multiple of four.</param>
/// <param name="Seed">Seed of every random draw.</param>
/// <param name="BandLow">Lower edge of the cook's band. [kg kg⁻¹]</param>
/// <param name="BandHigh">Upper edge. [kg kg⁻¹]</param>
/// <param name="SnapshotDays">Days at which the split is to be cut open, besides first and last; empty for five evenly spread.</param>
public sealed record DryingRequest(int Members = 64, int Seed = 1, double BandLow = 0.18, double BandHigh = 0.20, IReadOnlyList<double>? SnapshotDays = null);
