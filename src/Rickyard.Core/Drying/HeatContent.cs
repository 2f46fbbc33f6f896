using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// Heat held by moist wood as a function of its temperature, with the melting of its free water spread over <see cref="WaterMobility.AllFrozenCelsius"/> to 0 °C
/// (physics.md, H8): three straight lines, so that it can be turned round exactly. Zero at 0 °C, thawed. Water in the cell walls does not freeze.
/// </summary>
/// <param name="Frozen">Heat capacity below melting, per kg of dry wood. [J kg⁻¹ K⁻¹]</param>
/// <param name="Melting">The same within the melting range, heat of fusion included.</param>
/// <param name="Thawed">The same above it.</param>
internal readonly record struct HeatContent(double Frozen, double Melting, double Thawed)
{
    private const double Bottom = WaterMobility.AllFrozenCelsius;

    /// <summary>Of wood whose capacities, which rise by a tenth to 60 °C, are taken near one temperature.</summary>
    /// <param name="moisture">[kg kg⁻¹]</param>
    /// <param name="celsius">[°C]</param>
    internal static HeatContent Near(double moisture, double celsius)
    {
        var thawed = WoodThermal.HeatCapacity(moisture, Math.Max(celsius, 0) + Temperature.IcePointKelvins);
        var frozen = WoodThermal.HeatCapacity(moisture, Math.Min(celsius, Bottom) + Temperature.IcePointKelvins);
        var free = Math.Max(0, moisture - FiberSaturation.OfHandbook);
        return new(frozen, (frozen + thawed) / 2 + free * LatentHeat.OfFusion / -Bottom, thawed);
    }

    /// <summary>Heat above that of thawed wood at 0 °C. [J per kg of dry wood]</summary>
    internal double At(double celsius) => celsius >= 0 ? Thawed * celsius
        : celsius >= Bottom ? Melting * celsius
        : Melting * Bottom + Frozen * (celsius - Bottom);

    /// <summary>The inverse of <see cref="At"/>. [°C]</summary>
    /// <param name="heat">[J per kg of dry wood]</param>
    internal double Celsius(double heat) => heat >= 0 ? heat / Thawed
        : heat >= Melting * Bottom ? heat / Melting
        : Bottom + (heat - Melting * Bottom) / Frozen;

    /// <summary>
    /// Slope of <see cref="Celsius"/> for the matrix of an implicit step. While wood melts it is that of frozen wood: with its own, far smaller one a thin cell would
    /// take in a whole step's heat as if it never warmed, and end the step far above its neighbours. [K kg J⁻¹]
    /// </summary>
    /// <param name="heat">[J per kg of dry wood]</param>
    internal double SteepestSlope(double heat) => 1 / (heat >= 0 ? Thawed : Frozen);
}
