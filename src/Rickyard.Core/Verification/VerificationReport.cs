using MathNet.Numerics.Statistics;

namespace Rickyard.Core.Verification;

/// <summary>Measured cases beside predictions, with all that made them.</summary>
/// <param name="Rows">Every case that was run.</param>
/// <param name="DryingLaw">Boards beside the published law.</param>
/// <param name="Beside">Facts beside the model, not scored.</param>
/// <param name="Members">Members behind each band.</param>
/// <param name="Seed">Seed of every draw.</param>
/// <param name="ModelVersion">Version of the model and its constants.</param>
public sealed record VerificationReport(
    IReadOnlyList<VerificationRow> Rows, IReadOnlyList<DryingLawPoint> DryingLaw, IReadOnlyList<BesideFact> Beside, int Members, int Seed, string ModelVersion)
{
    /// <summary>The rows that count: all but stress tests.</summary>
    public IReadOnlyList<VerificationRow> Scored => [.. Rows.Where(row => !row.Case.IsStressTest)];

    /// <summary>Median distance from the measured range over the measured middle, of the scored rows. [–]</summary>
    public double MedianRelativeMissFromRange => Scored.Select(row => row.RelativeMissFromRange).Median();

    /// <summary>Median distance from the measured middle over it, of the scored rows. [–]</summary>
    public double MedianRelativeMissFromMiddle => Scored.Select(row => row.RelativeMissFromMiddle).Median();

    /// <summary>Median distance from the measured range of the scored rows that are in percentage points.</summary>
    public double MedianMissInPoints => Scored.Where(row => row.Case.IsInPoints).Select(row => row.MissFromRange).Median();

    /// <summary>How the engine's time goes with thickness, 1 to 3 in at 60 °C, as a power. [–]</summary>
    public double ThicknessExponent => Math.Log(At(3, 60).PredictedDays / At(1, 60).PredictedDays) / Math.Log(3);

    /// <summary>Time at 40 °C over time at 80 °C for a board of 1 in, by the engine. [–]</summary>
    public double TemperatureRatio => At(1, 40).PredictedDays / At(1, 80).PredictedDays;

    /// <summary>The same by the law. [–]</summary>
    public double LawTemperatureRatio => At(1, 40).LawDays / At(1, 80).LawDays;

    private DryingLawPoint At(double inches, double celsius) => DryingLaw.First(point => point.Inches == inches && point.Celsius == celsius);
}
