using System.Numerics.Tensors;
using Rickyard.Core.Air;

namespace Rickyard.Core.Wood;

/// <summary>
/// Heat that bound water needs beyond the evaporation of free water (form of Skaar 1988 and Siau 1984 as coded after Nelson 2000;
/// physics.md, eq. S4 to S6). The curve is not cut at fibre saturation: there it is 0.7 % of the latent heat and it dies out above.
/// </summary>
public static class HeatOfSorption
{
    private const double AtOvenDry = 1170e3;
    private const double Decay = 14;

    /// <summary>Differential heat, per mass of water leaving. [J kg⁻¹]</summary>
    /// <param name="moisture">Moisture content, not negative. [kg kg⁻¹]</param>
    public static double Differential(double moisture) => AtOvenDry * Math.Exp(-Decay * moisture);

    /// <summary>Integral heat of wetting from oven-dry, per mass of dry wood. [J kg⁻¹]</summary>
    /// <param name="moisture">Moisture content, not negative. [kg kg⁻¹]</param>
    public static double OfWetting(double moisture) => AtOvenDry / Decay * (1 - Math.Exp(-Decay * moisture));

    /// <summary>The same of many moistures.</summary>
    /// <param name="moisture">Not negative. [kg kg⁻¹]</param>
    /// <param name="destination">Written, as long as <paramref name="moisture"/>; may be the same. [J kg⁻¹]</param>
    public static void OfWetting(ReadOnlySpan<double> moisture, Span<double> destination)
    {
        TensorPrimitives.Multiply(moisture, -Decay, destination);
        TensorPrimitives.Exp(destination, destination);
        TensorPrimitives.Subtract(1.0, destination, destination);
        TensorPrimitives.Multiply(destination, AtOvenDry / Decay, destination);
    }

    /// <summary>All the heat that water at this moisture takes to become vapour. [J kg⁻¹]</summary>
    /// <param name="moisture">Moisture content, not negative. [kg kg⁻¹]</param>
    /// <param name="kelvins">Temperature. [K]</param>
    public static double OfEvaporation(double moisture, double kelvins) => LatentHeat.OfEvaporation(kelvins) + Differential(moisture);
}
