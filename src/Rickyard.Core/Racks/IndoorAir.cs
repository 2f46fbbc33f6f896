using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Racks;

/// <summary>Steady air of a room, a garage or a stage of a schedule: no sun, no rain, and more of it than the wood can moisten.</summary>
public static class IndoorAir
{
    /// <summary>Speed of indoor air where none is given: still rooms move at 0.1 to 0.2 m/s (common practice, no source). [m s⁻¹]</summary>
    public const double StillSpeed = 0.15;

    /// <summary>What a split meets in such air.</summary>
    /// <param name="temperature">Of the air.</param>
    /// <param name="humidity">Of the air, over water also below 0 °C.</param>
    /// <param name="splitSize">Width of the split. [m]</param>
    /// <param name="speed">Of the air; default <see cref="StillSpeed"/>.</param>
    public static Surroundings Surroundings(Temperature temperature, RelativeHumidity humidity, double splitSize, Speed? speed = null) => new(
        temperature.Kelvins,
        humidity.Fraction * SaturationPressure.OverWater(temperature.Kelvins),
        StackConvection.ConvectiveCoefficient(speed?.MetresPerSecond ?? StillSpeed, splitSize, temperature.Kelvins));
}
