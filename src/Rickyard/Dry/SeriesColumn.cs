using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;

namespace Rickyard.Dry;

/// <summary>One curve of a run as it leaves the program.</summary>
/// <param name="Name">With its unit and basis.</param>
/// <param name="Values">Where it comes from.</param>
/// <param name="Scale">From the unit inside to the unit named.</param>
/// <param name="Decimals">Digits kept.</param>
internal sealed record SeriesColumn(string Name, Func<MoistureSeries, double[]> Values, double Scale, int Decimals)
{
    /// <summary>Every curve, in the order they are written.</summary>
    public static IReadOnlyList<SeriesColumn> All { get; } =
    [
        new("mean_pct_dry", series => series.Mean, 100, 3),
        new("core_pct_dry", series => series.Core, 100, 3),
        new("shell_pct_dry", series => series.Shell, 100, 3),
        new("end_pct_dry", series => series.End, 100, 3),
        new("core_temp_c", series => series.CoreCelsius, 1, 2),
        new("mass_kg", series => series.MassKilograms, 1, 4),
        new("loss_pct", series => series.LossFraction, 100, 3),
    ];

    /// <summary>The bands of a run, by name.</summary>
    public static IEnumerable<(string Name, MoistureSeries Series)> Bands(DryingRun run) => [("p10", run.LowTenth), ("p50", run.Median), ("p90", run.HighTenth)];

    /// <summary>The bands of a class of a charge, by name.</summary>
    public static IEnumerable<(string Name, MoistureSeries Series)> Bands(ClassRun one) => [("p10", one.LowTenth), ("p50", one.Median), ("p90", one.HighTenth)];
}
