using MathNet.Numerics.Distributions;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// A supplier's word on the mean moisture of the lot: believed to a third, taken for a seventh too low, and with two chances in ten worth nothing (judgement: common
/// practice, no source, has sellers call wood dry too soon).
/// </summary>
/// <param name="Output">Mean moisture of a piece on that day, as numbered in the table.</param>
/// <param name="Moisture">What was promised. [kg kg⁻¹]</param>
/// <param name="Observation">Its place in the list.</param>
/// <param name="Day">Days from the start. [d]</param>
internal sealed record Promise(int Output, double Moisture, int Observation, double Day)
{
    private const double Spread = 0.35;
    private const double TooLow = 0.15;
    private const double WorthNothing = 0.2;
    private const double FlatDensity = 0.3;

    /// <summary>Expected logarithm of what would be promised of a lot, and its standard deviation.</summary>
    internal static (double Mean, double Deviation) Expected(double logMoisture) => (logMoisture - TooLow, Spread);

    /// <summary>Natural logarithm of its density, of the logarithm of the moisture.</summary>
    internal double LogDensity(double logMoisture) => Math.Log(
        (1 - WorthNothing) * Normal.PDF(logMoisture - TooLow, Spread, Math.Log(Moisture)) + WorthNothing * FlatDensity);

    /// <summary>Chance that it was worth nothing.</summary>
    internal double Wrong(double logMoisture) => WorthNothing * FlatDensity / Math.Exp(LogDensity(logMoisture));
}
