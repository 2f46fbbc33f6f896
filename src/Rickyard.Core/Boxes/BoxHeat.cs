using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>Heat contents on the common footing of the box's books: dry air, liquid water and oven-dry wood are zero at 0 °C (physics.md, eq. B11).</summary>
internal static class BoxHeat
{
    private const double AtIcePoint = 2501e3;

    /// <summary>Of vapour. [J kg⁻¹]</summary>
    internal static double OfVapor(double kelvins) => AtIcePoint + AirConstants.VaporHeatCapacity * (kelvins - Temperature.IcePointKelvins);

    /// <summary>Of liquid water. [J kg⁻¹]</summary>
    internal static double OfWater(double kelvins) => WoodThermal.WaterHeatCapacity * (kelvins - Temperature.IcePointKelvins);

    /// <summary>What vapour gives when it condenses and runs off at its temperature. [J kg⁻¹]</summary>
    internal static double OfCondensing(double kelvins) => OfVapor(kelvins) - OfWater(kelvins);

    /// <summary>Of moist air. [J per kg of dry air]</summary>
    internal static double OfAir(double kelvins, double ratio) => Psychrometrics.Enthalpy(kelvins, ratio);
}
