using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>The moisture inside the typical split at one time, for the picture of the split cut open.</summary>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Grid">The grid the values sit on (it changes when the piece is split again).</param>
/// <param name="Moisture">One value per cell, numbered as <see cref="SplitGrid.Index"/>. [kg kg⁻¹]</param>
public sealed record FieldSnapshot(double Day, SplitGrid Grid, double[] Moisture);
