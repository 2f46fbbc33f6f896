namespace Rickyard.Core.Measuring;

/// <summary>
/// How well wood conducts between pins, over wood of 28 %. Below, the eighth power of moisture or so: between 10 and 20 % the Douglas-fir row of James 1988 (Table 1) falls from 630
/// to 2.14 megohm, which is an exponent of 8.2. Above, little: a hundredfold from fibre saturation to full (James 1988 and Wood Handbook ch. 4, from memory), about the third power.
/// </summary>
internal static class PinConductance
{
    private const double Bend = 0.28;
    private const double Below = 8.2;
    private const double Above = 3;

    /// <summary>Conductance over that at 28 %.</summary>
    /// <param name="moisture">[kg kg⁻¹]</param>
    internal static double Of(double moisture) => Math.Pow(Math.Max(0, moisture) / Bend, moisture < Bend ? Below : Above);

    /// <summary>Moisture of a conductance. [kg kg⁻¹]</summary>
    internal static double Moisture(double conductance) => Bend * Math.Pow(conductance, 1 / (conductance < 1 ? Below : Above));
}
