using Rickyard.Core.Wood;

namespace Rickyard.Testing.Drying;

/// <summary>
/// One face as physics.md F1 and F2 say it, by bisection: the surface humidity at which the half cell supplies what the air takes, or saturation where it could
/// supply more.
/// </summary>
/// <param name="Potential">∫ D dM up to a moisture. [m² s⁻¹]</param>
/// <param name="Isotherm">At the wood's temperature.</param>
/// <param name="Conductance">Of film and bark, over basic density. [m s⁻¹ Pa⁻¹]</param>
/// <param name="Saturation">[Pa]</param>
/// <param name="Vapor">Of the air. [Pa]</param>
/// <param name="Depth">Face to middle of the cell over anisotropy. [m]</param>
public sealed record PlainFace(Func<double, double> Potential, SorptionIsotherm Isotherm, double Conductance, double Saturation, double Vapor, double Depth)
{
    /// <summary>Outflow per area. [m s⁻¹]</summary>
    /// <param name="moisture">Of the cell. [kg kg⁻¹]</param>
    public double Flux(double moisture) => Conductance * (Humidity(moisture) * Saturation - Vapor);

    /// <summary>The same as the cell feels it: of condensing water a cell above fibre saturation takes the less the nearer it is to 60 %. [m s⁻¹]</summary>
    /// <param name="moisture">Of the cell. [kg kg⁻¹]</param>
    public double Taken(double moisture) => Flux(moisture) is var flux && flux < 0 && Humidity(moisture) >= 1
        ? flux * Math.Clamp((0.60 - moisture) / (0.60 - Isotherm.Saturation), 0, 1)
        : flux;

    /// <summary>Humidity of the surface, 0 to 1.</summary>
    /// <param name="moisture">Of the cell. [kg kg⁻¹]</param>
    public double Humidity(double moisture)
    {
        double low = 0, high = 1;
        if (Excess(moisture, 1) >= 0) return 1;
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            if (Excess(moisture, middle) > 0) low = middle; else high = middle;
        }

        return (low + high) / 2;
    }

    private double Excess(double moisture, double humidity) =>
        (Potential(moisture) - Potential(Isotherm.Moisture(humidity))) / Depth - Conductance * (humidity * Saturation - Vapor);
}
