namespace Rickyard.Core.Drying;

/// <summary>How one piece answers to the air about it over a step, to first order.</summary>
/// <param name="Kelvins">Temperature it settles at. [K]</param>
/// <param name="ByAir">Its derivative by the temperature of the air. [–]</param>
/// <param name="ByVapor">Its derivative by the vapour pressure of the air. [K Pa⁻¹]</param>
/// <param name="Vapor">Given off. [kg s⁻¹]</param>
/// <param name="VaporByAir">Its derivative by the temperature of the air. [kg s⁻¹ K⁻¹]</param>
/// <param name="VaporByVapor">Its derivative by the vapour pressure of the air. [kg s⁻¹ Pa⁻¹]</param>
/// <param name="Convective">Convection to the air. [W K⁻¹]</param>
/// <param name="Radiative">Radiation to what it sees. [W K⁻¹]</param>
internal readonly record struct BodyResponse(
    double Kelvins, double ByAir, double ByVapor, double Vapor, double VaporByAir, double VaporByVapor, double Convective, double Radiative);
