using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class LatentHeatTests
{
    // Printed to 0.1 kJ/kg.
    [Fact]
    public void Evaporation_meets_the_steam_tables()
    {
        foreach (var row in ReferenceTable.Read("Air/latent_heat.csv"))
            Assert.Equal(row.Number("kj_kg"), LatentHeat.OfEvaporation(row.Number("temp_c") + Temperature.IcePointKelvins) / 1000, 0.05);
    }

    // Clausius and Clapeyron with the vapour as an ideal gas: L = R_v T² d ln p / dT, which Hyland and Wexler's ice curve must obey.
    [Theory]
    [InlineData(-40)]
    [InlineData(-20)]
    [InlineData(-1)]
    public void Sublimation_agrees_with_the_slope_of_the_ice_curve(double celsius)
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        var clapeyron = AirConstants.VaporGasConstant * kelvins * kelvins * SaturationPressure.Slope(kelvins) / SaturationPressure.Of(kelvins);
        Assert.Equal(1, LatentHeat.OfSublimation(kelvins) / clapeyron, 2e-3);
    }

    [Fact]
    public void Sublimation_is_melting_and_evaporation_together_at_zero() => Assert.Equal(
        LatentHeat.OfSublimation(273.15), LatentHeat.OfFusion + LatentHeat.OfEvaporation(273.15), 50.0);

    // Murphy and Koop 2005 for undercooled water: 56579 - 42.212 T + exp(0.1149 (281.6 - T)) J/mol.
    [Theory]
    [InlineData(-10)]
    [InlineData(-20)]
    [InlineData(-40)]
    public void Evaporation_of_undercooled_water_is_near_the_published_curve(double celsius)
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        var published = (56579 - 42.212 * kelvins + Math.Exp(0.1149 * (281.6 - kelvins))) / 18.01528e-3;
        Assert.Equal(1, LatentHeat.OfEvaporation(kelvins) / published, 0.005);
    }
}
