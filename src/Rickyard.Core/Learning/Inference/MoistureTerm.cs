using MathNet.Numerics.Distributions;
using Rickyard.Core.Measuring;

namespace Rickyard.Core.Learning.Inference;

/// <summary>A moisture, or a bound on one: a pin reading or an oven test.</summary>
/// <param name="Observation">Its place in the list.</param>
/// <param name="Day">Days from the start. [d]</param>
/// <param name="Output">What the engine says of it, in the piece's numbering.</param>
/// <param name="Value">What was found, or the bound. [kg kg⁻¹]</param>
/// <param name="Verdict">A value or a bound.</param>
/// <param name="Own">Standard deviation of this reading's own error. [kg kg⁻¹]</param>
/// <param name="Shared">What one standard deviation of the meter's own error adds. [kg kg⁻¹]</param>
/// <param name="Meter">Number of the meter, or -1.</param>
/// <param name="Relative">Standard deviation of what grows with the moisture: the stand-in's error and how alike places of one kind are. [–]</param>
internal sealed record MoistureTerm(int Observation, double Day, int Output, double Value, MeterVerdict Verdict, double Own, double Shared, int Meter, double Relative)
    : Term(Observation, Day)
{
    private const double FlatDensity = 1;

    /// <inheritdoc/>
    internal override TermChance Chance(in PiecePrediction prediction, ref Discrepancy discrepancy)
    {
        discrepancy.To(Day);
        var moisture = prediction.Value(Output);
        var expected = moisture * (1 + discrepancy.Mean) + Shared * prediction.Meter(Meter);
        var variance = moisture * moisture * (discrepancy.Variance + Relative * Relative) + Own * Own;
        if (Verdict == MeterVerdict.Measured) return Number(Value, expected, variance, moisture, FlatDensity, ref discrepancy);
        var above = Normal.CDF(0, 1, (expected - Value) / Math.Sqrt(variance));
        return Event(Verdict == MeterVerdict.AtLeast ? above : 1 - above, expected, Math.Sqrt(variance));
    }

    /// <inheritdoc/>
    internal override Pull Plain(in PiecePrediction prediction, bool believed)
    {
        var moisture = prediction.Value(Output);
        var expected = moisture + Shared * prediction.Meter(Meter);
        var variance = moisture * moisture * Relative * Relative + Own * Own;
        return Verdict == MeterVerdict.Measured
            ? NumberPull(Value, expected, variance, moisture, FlatDensity, believed)
            : Pull.OfBound(expected, Value, Math.Sqrt(variance + moisture * moisture * Discrepancy.Spread * Discrepancy.Spread), Verdict == MeterVerdict.AtLeast ? 1 : -1);
    }
}
