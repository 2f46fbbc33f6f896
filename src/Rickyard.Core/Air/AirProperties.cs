namespace Rickyard.Core.Air;

/// <summary>
/// Transport properties of air for surface coefficients (physics.md, eq. A9 to A14). Those of dry air: vapour changes viscosity and
/// conductivity by less than 3 % up to 60 °C. Raw doubles: these sit inside kernels.
/// </summary>
public static class AirProperties
{
    /// <summary>Density of dry air, ideal gas. [kg m⁻³]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double Density(double kelvins, double pressure) => pressure / (AirConstants.DryAirGasConstant * kelvins);

    /// <summary>Dynamic viscosity (Sutherland's law, US Standard Atmosphere 1976, eq. 51). [Pa s]</summary>
    /// <param name="kelvins">Temperature, 230 to 480. [K]</param>
    public static double Viscosity(double kelvins) => 1.458e-6 * Math.Pow(kelvins, 1.5) / (kelvins + 110.4);

    /// <summary>Thermal conductivity (US Standard Atmosphere 1976, eq. 53). [W m⁻¹ K⁻¹]</summary>
    /// <param name="kelvins">Temperature, 230 to 480. [K]</param>
    public static double Conductivity(double kelvins) =>
        2.64638e-3 * Math.Pow(kelvins, 1.5) / (kelvins + 245.4 * Math.Pow(10, -12 / kelvins));

    /// <summary>Diffusivity of water vapour in air (Siau 1984, eq. 6.15). [m² s⁻¹]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double VaporDiffusivity(double kelvins, double pressure) => 0.220e-4 * (101325 / pressure) * Math.Pow(kelvins / 273, 1.75);

    /// <summary>Kinematic viscosity. [m² s⁻¹]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double KinematicViscosity(double kelvins, double pressure) => Viscosity(kelvins) / Density(kelvins, pressure);

    /// <summary>Thermal diffusivity. [m² s⁻¹]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    /// <param name="pressure">Total pressure. [Pa]</param>
    public static double ThermalDiffusivity(double kelvins, double pressure) =>
        Conductivity(kelvins) / (Density(kelvins, pressure) * AirConstants.DryAirHeatCapacity);

    /// <summary>Prandtl number, viscosity over thermal diffusivity. [–]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double Prandtl(double kelvins) => Viscosity(kelvins) * AirConstants.DryAirHeatCapacity / Conductivity(kelvins);

    /// <summary>Lewis number, thermal diffusivity over vapour diffusivity; the pressure cancels. [–]</summary>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double Lewis(double kelvins) => ThermalDiffusivity(kelvins, 101325) / VaporDiffusivity(kelvins, 101325);
}
