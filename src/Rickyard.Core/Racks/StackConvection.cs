namespace Rickyard.Core.Racks;

/// <summary>
/// Convection at splits in moving air: Churchill and Bernstein 1977 for a cylinder across the flow, never below still air (weather-racks.md,
/// eq. R3). Properties of air as powers of temperature through the values of Incropera's table at 300 K (from memory), within 1 % from -20 to 80 °C.
/// </summary>
public static class StackConvection
{
    /// <summary>Natural convection at a few kelvins of difference, below which the coefficient does not fall; 2 to 4 in textbooks. [W m⁻² K⁻¹]</summary>
    public const double StillAir = 2.5;

    private const double Prandtl = 0.707;

    /// <summary>Convective heat transfer coefficient. [W m⁻² K⁻¹]</summary>
    /// <param name="speed">Of the air past the split. [m s⁻¹]</param>
    /// <param name="size">Width of the split. [m]</param>
    /// <param name="kelvins">Temperature of the air. [K]</param>
    public static double ConvectiveCoefficient(double speed, double size, double kelvins)
    {
        double conductivity = 0.0263 * Math.Pow(kelvins / 300, 0.85), viscosity = 1.589e-5 * Math.Pow(kelvins / 300, 1.75);
        var reynolds = Math.Max(0, speed) * size / viscosity;
        var nusselt = 0.3 + 0.62 * Math.Sqrt(reynolds) * Math.Cbrt(Prandtl) / Math.Pow(1 + Math.Pow(0.4 / Prandtl, 2.0 / 3), 0.25)
            * Math.Pow(1 + Math.Pow(reynolds / 282000, 0.625), 0.8);
        return Math.Max(StillAir, nusselt * conductivity / size);
    }
}
