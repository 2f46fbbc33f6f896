using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes;

/// <summary>One class of a charge through the run; series along the report times.</summary>
/// <param name="Class">The class.</param>
/// <param name="Typical">Its typical split.</param>
/// <param name="LowTenth">A tenth of its pieces are below, at each time.</param>
/// <param name="Median">Half of them.</param>
/// <param name="HighTenth">Nine tenths.</param>
/// <param name="Window">When cores are in the cook's band.</param>
public sealed record ClassRun(
    ChargeClass Class, MoistureSeries Typical, MoistureSeries LowTenth, MoistureSeries Median, MoistureSeries HighTenth, ReadyWindow Window);
