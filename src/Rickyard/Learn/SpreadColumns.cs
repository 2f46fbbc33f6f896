using Rickyard.Core.Drying;
using Rickyard.Core.Learning;

namespace Rickyard.Learn;

/// <summary>Spreads by the names of their parts.</summary>
internal static class SpreadColumns
{
    /// <summary>p10, p50, p90.</summary>
    public static IReadOnlyList<(string Name, Func<Spread, double> Value)> Parts { get; } = [("p10", spread => spread.Low), ("p50", spread => spread.Middle), ("p90", spread => spread.High)];

    /// <summary>The bands of a lot's splits.</summary>
    public static IEnumerable<(string Name, MoistureSeries Series)> Bands(LearningRun run) => [("p10", run.LowTenth), ("p50", run.Median), ("p90", run.HighTenth)];

    /// <summary>The bands of a marked split.</summary>
    public static IEnumerable<(string Name, MoistureSeries Series)> Bands(PieceForecast piece) => [("p10", piece.LowTenth), ("p50", piece.Median), ("p90", piece.HighTenth)];
}
