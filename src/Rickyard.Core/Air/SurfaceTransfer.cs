using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>
/// Heat and vapour carried between air and the faces of a split (physics.md, eq. A15 to A19). A split is taken as a cylinder across the
/// air stream whose diameter is its characteristic size. Scatter of such correlations against measured timber: up to 38 % (Rozas et al. 2024).
/// Raw doubles: these sit inside kernels.
/// </summary>
public static class SurfaceTransfer
{
    /// <summary>Speed of indoor air where none is given; still air in rooms moves at 0.1 to 0.2 m/s (common practice, no source). [m s⁻¹]</summary>
    public const double StillIndoorSpeed = 0.15;

    /// <summary>Surface-to-air difference that drives the still-air floor; judgement: drying splits sit 1 to 10 K from the air. [K]</summary>
    public const double StillAirTemperatureDifference = 3;

    /// <summary>Emissivity of wood in the thermal infrared (Incropera and DeWitt, from memory: 0.82 to 0.92). [–]</summary>
    public const double WoodEmissivity = 0.9;

    /// <summary>Stefan-Boltzmann constant (CODATA). [W m⁻² K⁻⁴]</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>
    /// Convective heat transfer coefficient: forced (<see cref="CylinderInCrossFlow"/>) and still-air convection joined by fourth powers
    /// (Incropera and DeWitt, ch. 9, mixed convection across cylinders, from memory), so never below the still-air floor. [W m⁻² K⁻¹]
    /// </summary>
    /// <param name="speed">Air speed, 0 and up. [m s⁻¹]</param>
    /// <param name="size">Characteristic size (diameter of the like cylinder), above 0. [m]</param>
    /// <param name="kelvins">Film temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double ConvectiveCoefficient(double speed, double size, double kelvins, double pressure = 101325) => Math.Sqrt(Math.Sqrt(
        Math.Pow(CylinderInCrossFlow(speed, size, kelvins, pressure), 4) + Math.Pow(StillAir(size, kelvins, pressure), 4)));

    /// <summary>Forced convection across a cylinder (Churchill and Bernstein 1977), Re Pr above 0.2. [W m⁻² K⁻¹]</summary>
    /// <param name="speed">Air speed. [m s⁻¹]</param>
    /// <param name="size">Diameter. [m]</param>
    /// <param name="kelvins">Film temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double CylinderInCrossFlow(double speed, double size, double kelvins, double pressure = 101325)
    {
        double reynolds = speed * size / AirProperties.KinematicViscosity(kelvins, pressure), prandtl = AirProperties.Prandtl(kelvins);
        var nusselt = 0.3 + 0.62 * Math.Sqrt(reynolds) * Math.Cbrt(prandtl) / Math.Pow(1 + Math.Pow(0.4 / prandtl, 2.0 / 3), 0.25)
            * Math.Pow(1 + Math.Pow(reynolds / 282000, 0.625), 0.8);
        return nusselt * AirProperties.Conductivity(kelvins) / size;
    }

    /// <summary>
    /// Natural convection round a horizontal cylinder (Churchill and Chu 1975) at <see cref="StillAirTemperatureDifference"/>: the floor of
    /// <see cref="ConvectiveCoefficient"/>. [W m⁻² K⁻¹]
    /// </summary>
    /// <param name="size">Diameter. [m]</param>
    /// <param name="kelvins">Film temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double StillAir(double size, double kelvins, double pressure = 101325)
    {
        var prandtl = AirProperties.Prandtl(kelvins);
        var rayleigh = 9.80665 * StillAirTemperatureDifference / kelvins * Math.Pow(size, 3)
            / (AirProperties.KinematicViscosity(kelvins, pressure) * AirProperties.ThermalDiffusivity(kelvins, pressure));
        var root = 0.60 + 0.387 * Math.Pow(rayleigh, 1.0 / 6) / Math.Pow(1 + Math.Pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
        return root * root * AirProperties.Conductivity(kelvins) / size;
    }

    /// <summary>
    /// Vapour flux per difference of vapour pressure between face and air, tied to the heat coefficient by Chilton and Colburn (1934):
    /// h_m = h / (ρ c_p Le^(2/3)), flux = h_m Δp_v / (R_v T). Low transfer rates: the outflow of vapour itself is not counted, which leaves it
    /// 2 to 3 % low over a wet face in air of 30 °C and 10 to 20 % low at 70 °C. [kg m⁻² s⁻¹ Pa⁻¹]
    /// </summary>
    /// <param name="convectiveCoefficient">Convection only, without radiation. [W m⁻² K⁻¹]</param>
    /// <param name="kelvins">Film temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double VaporConductance(double convectiveCoefficient, double kelvins, double pressure) => convectiveCoefficient
        / (AirProperties.Density(kelvins, pressure) * AirConstants.DryAirHeatCapacity * Math.Pow(AirProperties.Lewis(kelvins), 2.0 / 3))
        / (AirConstants.VaporGasConstant * kelvins);

    /// <summary>Radiation to surroundings of like temperature, made linear: 4 ε σ T³. [W m⁻² K⁻¹]</summary>
    /// <param name="emissivity">Of the wood, 0 to 1; surroundings taken as black. [–]</param>
    /// <param name="meanKelvins">Mean temperature of face and surroundings. [K]</param>
    public static double RadiativeCoefficient(double emissivity, double meanKelvins) =>
        4 * emissivity * StefanBoltzmann * meanKelvins * meanKelvins * meanKelvins;

    /// <summary>
    /// Vapour carries air along with it: over a hot wet face the flux is higher than by diffusion alone by P over the mean pressure of dry air in the film
    /// (Stefan flow; Incropera ch. 6, from memory). 1.01 over cool wood, 1.4 in saturated air at 70 °C.
    /// </summary>
    /// <param name="pressure">Total. [Pa]</param>
    /// <param name="atSurface">Vapour pressure at the face. [Pa]</param>
    /// <param name="inAir">Vapour pressure in the air. [Pa]</param>
    public static double StefanFactor(double pressure, double atSurface, double inAir) => pressure / Math.Max(0.05 * pressure, pressure - (atSurface + inAir) / 2);
}
