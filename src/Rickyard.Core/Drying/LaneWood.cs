namespace Rickyard.Core.Drying;

/// <summary>What one member's wood has of its own, beside its size.</summary>
/// <param name="BasicDensity">Oven-dry mass over green volume. [kg m⁻³]</param>
/// <param name="Bound">Factor on the diffusivity of bound water and vapour (and, since structure slows both, on free water).</param>
/// <param name="Free">Further factor on free water.</param>
/// <param name="BarkConductance">Vapour conductance of the bark. [kg m⁻² s⁻¹ Pa⁻¹]</param>
/// <param name="Sorption">Factor on the isotherm: 1 is the table, up to 1.11 wood that has only ever dried (hysteresis).</param>
public sealed record LaneWood(
    double BasicDensity, double Bound = 1, double Free = 1, double BarkConductance = LaneWood.UsualBarkConductance, double Sorption = 1)
{
    /// <summary>
    /// 5e-10 kg m⁻² s⁻¹ Pa⁻¹, about a hundredth of bare wood in still air. Judgement, between sound inner bark of beech (diffusivity 2.2e-11 m² s⁻¹ at
    /// 35 °C, Holzforschung 72: 105, over 6 mm: 1e-10) and bark with cracks and lost scales (2.5e-9); spread by <see cref="BarkSpreadLog"/>.
    /// </summary>
    public const double UsualBarkConductance = 5e-10;

    /// <summary>Standard deviation of the logarithm of bark conductance: a factor 3.</summary>
    public const double BarkSpreadLog = 1.1;
}
