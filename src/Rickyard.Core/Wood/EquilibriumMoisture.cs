using Rickyard.Core.Air;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Wood;

/// <summary>
/// The moisture at which wood neither gives nor takes water in steady air, and back (physics.md, eq. S1 and S2). The isotherm lies midway
/// between wood that dries and wood that wets; <see cref="Spread"/> gives both. Humidity is over liquid water, also below 0 °C. Edges: below
/// -1 °C and above 110 °C the isotherm is held; above the boiling point the air's own ceiling on humidity rules; at 100 % the result is
/// the fibre saturation point, and from 97 % up one point of humidity moves it by more than a point, so sensors cannot tell.
/// </summary>
public static class EquilibriumMoisture
{
    /// <summary>Of wood that dries, over the isotherm: 1/0.9, from a ratio of the branches of 0.8 (Wood Handbook ch. 4, from memory).</summary>
    public const double DesorptionFactor = 1.11;

    /// <summary>Of wood that wets, over the isotherm: 0.8/0.9, from the same ratio.</summary>
    public const double AdsorptionFactor = 0.89;

    /// <summary>Equilibrium moisture content in air.</summary>
    public static MoistureContent From(Temperature temperature, RelativeHumidity humidity) =>
        MoistureContent.FromFraction(SorptionIsotherm.At(temperature.Celsius).Moisture(humidity.Fraction));

    /// <summary>Equilibrium moisture content in air.</summary>
    public static MoistureContent From(MoistAir air) => From(air.Temperature, air.RelativeHumidity);

    /// <summary>Relative humidity of air in balance with wood; 100 % at and above fibre saturation.</summary>
    public static RelativeHumidity HumidityOver(Temperature temperature, MoistureContent moisture) =>
        RelativeHumidity.FromFraction(SorptionIsotherm.At(temperature.Celsius).Activity(moisture.Fraction));

    /// <summary>Where wood comes to rest when it wets, on the isotherm, and when it dries.</summary>
    public static SorptionSpread Spread(Temperature temperature, RelativeHumidity humidity)
    {
        var mean = From(temperature, humidity);
        return new(MoistureContent.FromFraction(AdsorptionFactor * mean.Fraction), mean, MoistureContent.FromFraction(DesorptionFactor * mean.Fraction));
    }
}
