using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class WoodEnthalpyTests
{
    private const double Ice = 273.15;

    [Fact]
    public void Slope_by_temperature_is_the_heat_capacity() => Gen.Select(Gen.Double[0, 1.2], Gen.Double[-30, 110]).Sample((moisture, celsius) =>
    {
        const double reach = 1e-3;
        var kelvins = celsius + Ice;
        if (Math.Abs(celsius) < reach || Math.Abs(celsius + WoodEnthalpy.FreezingSpan) < reach) return;
        var slope = (WoodEnthalpy.Sensible(moisture, kelvins + reach) - WoodEnthalpy.Sensible(moisture, kelvins - reach)) / (2 * reach);
        Assert.Equal(WoodEnthalpy.Capacity(moisture, kelvins), slope, 1e-5 * slope);
    });

    [Fact]
    public void Outside_the_freezing_span_the_capacity_is_that_of_the_handbook() => Gen.Select(Gen.Double[0, 1.2], Gen.Double[0, 110]).Sample((moisture, celsius) =>
        Assert.Equal(WoodThermal.HeatCapacity(moisture, celsius + Ice), WoodEnthalpy.Capacity(moisture, celsius + Ice)));

    [Fact]
    public void Melting_takes_the_heat_of_fusion_of_the_free_water_only()
    {
        double Across(double moisture) => WoodEnthalpy.Sensible(moisture, Ice) - WoodEnthalpy.Sensible(moisture, Ice - WoodEnthalpy.FreezingSpan);
        double Warming(double moisture) => WoodThermal.HeatCapacity(moisture, Ice - 0.5) * WoodEnthalpy.FreezingSpan;
        Assert.Equal(0.5 * LatentHeat.OfFusion, Across(0.8) - Warming(0.8), 1);
        Assert.Equal(0, Across(0.3) - Warming(0.3), 1);
    }

    [Fact]
    public void Zero_at_the_ice_point_whatever_the_moisture() => Gen.Double[0, 1.5].Sample(moisture => Assert.Equal(0, WoodEnthalpy.Sensible(moisture, Ice), 1e-9));

    // reference: 90 kg of water and 100 kg of wood by 40 K take about 21 MJ (heat capacities 1.3 to 1.7 and 4.19 kJ/(kg K), from memory)
    [Fact]
    public void Warming_wet_wood_by_forty_kelvins_takes_what_wood_and_water_take() =>
        Assert.InRange(100 * (WoodEnthalpy.Sensible(0.9, Ice + 60) - WoodEnthalpy.Sensible(0.9, Ice + 20)) / 1e6, 20, 23);
}
