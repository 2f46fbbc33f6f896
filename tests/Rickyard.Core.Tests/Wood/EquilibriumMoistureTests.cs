using CsCheck;

using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class EquilibriumMoistureTests
{
    // Remembered schedule points, printed to 1 % of humidity and 0.1 % of moisture; one step of humidity moves the moisture by up to 0.35 there.
    [Fact]
    public void Kiln_schedule_points_of_wet_bulb_depression_are_met()
    {
        foreach (var row in ReferenceTable.Read("Wood/emc_wet_bulb_check_points.csv"))
        {
            var air = Psychrometer(row);
            Assert.Equal(row.Number("rh_percent"), air.RelativeHumidity.Percent, 1.1);
            Assert.Equal(row.Number("emc_percent"), EquilibriumMoisture.From(air).PercentDry, 0.35);
        }
    }

    // The same equations worked elsewhere, with the Fahrenheit form of the isotherm. Below 32 °F the wick is ice; humidity there is over ice.
    [Fact]
    public void Table_of_wet_bulb_depressions_is_met()
    {
        foreach (var row in ReferenceTable.Read("Wood/emc_wet_bulb_depression.csv").Where(row => row.Number("dry_bulb_f") >= 32))
        {
            var air = Psychrometer(row);
            Assert.True(Math.Abs(row.Number("rh_percent") - air.RelativeHumidity.Percent) < 0.11, $"{row}: {air.RelativeHumidity}");
            Assert.True(Math.Abs(row.Number("emc_percent") - EquilibriumMoisture.From(air).PercentDry) < 0.06, $"{row}: {EquilibriumMoisture.From(air)}");
        }
    }

    [Fact]
    public void Humidity_over_wood_returns_the_humidity_it_came_from() => Gen.Select(Gen.Double[-40, 110], Gen.Double[0, 1]).Sample((celsius, humidity) =>
    {
        var temperature = Temperature.FromCelsius(celsius);
        var moisture = EquilibriumMoisture.From(temperature, RelativeHumidity.FromFraction(humidity));
        return Math.Abs(EquilibriumMoisture.HumidityOver(temperature, moisture).Fraction - humidity) < 1e-9;
    });

    // Ratio of the branches 0.8 (Wood Handbook ch. 4, from memory).
    [Fact]
    public void Hysteresis_keeps_the_ratio_of_its_branches()
    {
        var spread = EquilibriumMoisture.Spread(Temperature.FromCelsius(20), RelativeHumidity.FromPercent(65));
        Assert.Equal(0.8, spread.Adsorption.Fraction / spread.Desorption.Fraction, 0.005);
        Assert.Equal(spread.Mean.Fraction, (spread.Adsorption.Fraction + spread.Desorption.Fraction) / 2, 1e-12);
    }

    [Fact]
    public void Saturated_air_wets_wood_to_fibre_saturation() => Assert.Equal(
        FiberSaturation.OfIsotherm(20), EquilibriumMoisture.From(Temperature.FromCelsius(20), RelativeHumidity.FromFraction(1)).Fraction, 1e-12);

    private static MoistAir Psychrometer(ReferenceRow row)
    {
        double dry = row.Number("dry_bulb_f"), wet = dry - row.Number("depression_f");
        var result = MoistAir.FromWetBulb(Temperature.FromFahrenheit(dry), Temperature.FromFahrenheit(wet), Pressure.StandardAtmosphere);
        return result.TryGet(out var air) ? air : throw new InvalidOperationException($"{row}: {string.Join(" ", result.Problems)}");
    }
}
