namespace Rickyard.Core.Drying;

/// <summary>
/// What the air does to the faces of a split during one span of time: the one door through which weather, racks, rooms and hot boxes
/// reach the solver. Raw SI doubles, since series of these are long and sit next to the kernel.
/// </summary>
/// <param name="TemperatureKelvins">Temperature of the air fed to the split. [K]</param>
/// <param name="VaporPressure">Partial pressure of water vapour of that air. [Pa]</param>
/// <param name="ConvectiveCoefficient">Convective heat transfer coefficient, without radiation. [W m⁻² K⁻¹]</param>
/// <param name="AbsorbedRadiation">Sun absorbed minus extra sky cooling, averaged over the whole surface of the split. [W m⁻²]</param>
/// <param name="RainOnSides">Rain reaching bark and split faces, per area of them. [kg m⁻² s⁻¹]</param>
/// <param name="RainOnEnds">Rain reaching end grain, per area of it. [kg m⁻² s⁻¹]</param>
/// <param name="FreshAir">Volume of the air above that passes a split, per area of its surface; 0 where it is sealed up, infinity where it cannot moisten its own air. [m³ s⁻¹ m⁻²]</param>
/// <param name="RadiantView">Part of what a split's faces see that is at the temperature of its air: 1 in the open; less where they see each other, 0 to 1.</param>
public readonly record struct Surroundings(
    double TemperatureKelvins,
    double VaporPressure,
    double ConvectiveCoefficient,
    double AbsorbedRadiation = 0,
    double RainOnSides = 0,
    double RainOnEnds = 0,
    double FreshAir = double.PositiveInfinity,
    double RadiantView = 1)
{
    /// <summary>Fresh air of wood closed up in its own vapour: next to none, 5 mm of air in two months, so that its resistance is finite. [m³ s⁻¹ m⁻²]</summary>
    public const double ClosedUp = 1e-9;
}
