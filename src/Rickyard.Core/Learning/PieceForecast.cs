using Rickyard.Core.Drying;

namespace Rickyard.Core.Learning;

/// <summary>A marked split: its own bands, tighter than the lot's.</summary>
/// <param name="Piece">Its number or name.</param>
/// <param name="LowTenth">A tenth of the draws are below this, at each time.</param>
/// <param name="Median">Half.</param>
/// <param name="HighTenth">Nine tenths.</param>
/// <param name="Window">When its core is in the cook's band.</param>
/// <param name="ReadyKilograms">What it weighs when its core comes into the band (upper edge); null where it never does within the run. [kg]</param>
public sealed record PieceForecast(string Piece, MoistureSeries LowTenth, MoistureSeries Median, MoistureSeries HighTenth, ReadyWindow Window, Spread? ReadyKilograms);
