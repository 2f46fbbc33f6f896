namespace Rickyard.Core.Measuring;

/// <summary>
/// How well wood conducts beside other wood of the same piece, by its moisture (physics.md, V1): the Douglas-fir row of James 1988, FPL-GTR-6, Table 1, as the
/// log-log line through its 10 to 25 %, R ∝ M^−7.83 (derived; within 0.55 points of the row), carried on to fibre saturation and below 10 %. Above it the rise
/// is slow (James 1988, from memory: about a hundredfold or less up to full saturation); its exponent of 2 is judgement.
/// Only ratios matter here, so the line of one species serves all.
/// </summary>
public static class PinConductance
{
    /// <summary>Slope of log conductance by log moisture below fibre saturation: 1/0.12769. [–]</summary>
    public const double Slope = 7.83;

    /// <summary>The same above it. [–]</summary>
    public const double SlopeWhenWet = 2;

    /// <summary>Moisture where one passes into the other. [kg kg⁻¹]</summary>
    public const double Knee = 0.30;

    /// <summary>Conductance over that at the knee. [–]</summary>
    /// <param name="moisture">[kg kg⁻¹], 0 or more.</param>
    public static double Of(double moisture) => Math.Pow(moisture / Knee, moisture < Knee ? Slope : SlopeWhenWet);

    /// <summary>Moisture of wood that conducts so well. [kg kg⁻¹]</summary>
    /// <param name="conductance">Conductance over that at the knee. [–]</param>
    public static double Moisture(double conductance) => Knee * Math.Pow(conductance, 1 / (conductance < 1 ? Slope : SlopeWhenWet));
}
