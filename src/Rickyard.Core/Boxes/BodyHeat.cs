namespace Rickyard.Core.Boxes;

/// <summary>Heat that all pieces of a class take over a step.</summary>
/// <param name="Kelvins">Temperature they come to. [K]</param>
/// <param name="FromAir">By convection. [W]</param>
/// <param name="FromWalls">By radiation from the walls. [W]</param>
/// <param name="FromElement">By radiation from the heater. [W]</param>
/// <param name="FromDew">Of dew that runs off again. [W]</param>
/// <param name="Convective">[W K⁻¹]</param>
/// <param name="Radiative">[W K⁻¹]</param>
/// <param name="Stiffness">What one kelvin more would take, stored over the step and given back to air and walls. [W K⁻¹]</param>
internal readonly record struct BodyHeat(
    double Kelvins, double FromAir, double FromWalls, double FromElement, double FromDew, double Convective, double Radiative,
    double Stiffness)
{
    internal double Total => FromAir + FromWalls + FromElement + FromDew;
}
