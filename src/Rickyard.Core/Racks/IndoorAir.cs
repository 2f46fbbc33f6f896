using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Racks;

/// <summary>Steady air of a room, a garage or a stage of a schedule: no sun, no rain, and more of it than the wood can moisten.</summary>
public static class IndoorAir
{
    /// <summary>What a split meets in such air.</summary>
    /// <param name="temperature">Of the air.</param>
    /// <param name="humidity">Of the air, over water also below 0 °C.</param>
    /// <param name="splitSize">Width of the split. [m]</param>
    /// <param name="speed">Of the air; default <see cref="SurfaceTransfer.StillIndoorSpeed"/>.</param>
    public static Surroundings Surroundings(Temperature temperature, RelativeHumidity humidity, double splitSize, Speed? speed = null) => new(
        temperature.Kelvins,
        humidity.Fraction * SaturationPressure.OverWater(temperature.Kelvins),
        SurfaceTransfer.ConvectiveCoefficient(speed?.MetresPerSecond ?? SurfaceTransfer.StillIndoorSpeed, splitSize, temperature.Kelvins));
}
