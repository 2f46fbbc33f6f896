namespace Rickyard.Core.Verification;

/// <summary>A red oak board dried from 60 to 20 % dry basis, by the published law and by the engine.</summary>
/// <param name="Inches">Thickness. [in]</param>
/// <param name="Celsius">Dry bulb. [°C]</param>
/// <param name="LawDays">By <see cref="RedOakDryingLaw"/>. [d]</param>
/// <param name="PredictedDays">By the engine. [d]</param>
public sealed record DryingLawPoint(double Inches, double Celsius, double LawDays, double PredictedDays)
{
    /// <summary>Engine over law. [–]</summary>
    public double Factor => PredictedDays / LawDays;
}
