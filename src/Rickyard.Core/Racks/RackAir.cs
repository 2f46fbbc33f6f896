using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Racks;

/// <summary>
/// Turns the weather of a place into what the splits of a stack there meet, hour by hour: an average over the whole stack. The stack moistens its
/// own air; that is left to the solver by way of <see cref="Surroundings.FreshAir"/> (physics.md, eq. R1 to R11, says what is published
/// and what is judgement).
/// </summary>
public static class RackAir
{
    /// <summary>What the splits meet in each hour of the weather.</summary>
    /// <param name="weather">Outdoors.</param>
    /// <param name="rack">The stack as described.</param>
    /// <param name="stack">Its sizes.</param>
    /// <param name="factors">How this rack differs from the description; default: not at all.</param>
    /// <returns>One entry an hour.</returns>
    public static Surroundings[] Surroundings(HourlyWeather weather, RackDescription rack, StackGeometry stack, RackFactors? factors = null)
    {
        if (rack.Problems().FirstOrDefault() is { } problem) throw new ArgumentException(problem.ToString(), nameof(rack));
        var differing = factors ?? RackFactors.AsDescribed;
        var snow = new SnowOnTop();
        var hours = new Surroundings[weather.Hours.Count];
        for (var hour = 0; hour < hours.Length; hour++) hours[hour] = Hour(weather.Hours[hour], rack, stack, differing, snow);
        return hours;
    }

    private static Surroundings Hour(WeatherHour hour, RackDescription rack, StackGeometry stack, RackFactors factors, SnowOnTop snow)
    {
        var kelvins = hour.Celsius + Temperature.IcePointKelvins;
        var before = StackWind.Before(hour.WindSpeed, rack.Wind);
        var between = StackWind.Between(before, rack, factors.Wind);
        var (rain, melt) = snow.Next(hour.Celsius, hour.Rain);
        var (sides, ends) = StackRain.OnFaces(rain + melt, rain, before, rack, stack, factors.Rain);
        return new(
            kelvins,
            hour.RelativeHumidity * Air.SaturationPressure.OverWater(kelvins),
            Air.SurfaceTransfer.ConvectiveCoefficient(between, stack.SplitSize, kelvins),
            StackSun.Absorbed(hour.GlobalSun, hour.Rain, rack, stack, factors.Sun),
            sides,
            ends,
            StackWind.FreshAir(between, rack, stack));
    }
}
