using CsCheck;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class HeatContentTests
{
    [Fact]
    public void Temperature_of_its_heat_is_the_temperature() => Gen.Select(Gen.Double[0, 1.5], Gen.Double[-40, 100], Gen.Double[-40, 100]).Sample((moisture, near, celsius) =>
    {
        var content = HeatContent.Near(moisture, near);
        Assert.Equal(celsius, content.Celsius(content.At(celsius)), 1e-9);
    });

    [Fact]
    public void Heat_rises_with_temperature_without_a_jump() => Gen.Select(Gen.Double[0, 1.5], Gen.Double[-40, 99]).Sample((moisture, celsius) =>
    {
        var content = HeatContent.Near(moisture, celsius);
        Assert.InRange(content.At(celsius + 1e-6) - content.At(celsius), 0, 1);
    });

    // Free water above 30 % melts: 0.5 kg of it at 333.3 kJ/kg (fusion at 0 °C: sublimation less evaporation there), besides what warms by two kelvins.
    [Fact]
    public void Thawing_takes_up_the_heat_of_fusion_of_the_free_water()
    {
        HeatContent green = HeatContent.Near(0.8, 0), dry = HeatContent.Near(0.3, 0);
        Assert.Equal(0.5 * LatentHeat.OfFusion, green.At(0) - green.At(-2) - 2 * (green.Frozen + green.Thawed) / 2, 1);
        Assert.Equal(2 * (dry.Frozen + dry.Thawed) / 2, dry.At(0) - dry.At(-2), 1);
    }
}
