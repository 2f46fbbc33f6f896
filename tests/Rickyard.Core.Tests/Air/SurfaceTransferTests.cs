using CsCheck;

using Rickyard.Core.Air;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class SurfaceTransferTests
{
    private const double SplitSize = 0.12;
    private const double Sea = 101325;

    // The same correlation worked elsewhere with other air properties, which differ by up to 1 %.
    [Fact]
    public void Cylinder_across_the_stream_meets_the_worked_values()
    {
        foreach (var row in ReferenceTable.Read("Air/cylinder_convection.csv"))
        {
            var kelvins = row.Number("temp_c") + 273.15;
            var heat = SurfaceTransfer.CylinderInCrossFlow(row.Number("speed_m_s"), SplitSize, kelvins);
            var mass = SurfaceTransfer.VaporConductance(heat, kelvins, Sea) * AirConstants.VaporGasConstant * kelvins;
            Assert.Equal(1, heat / row.Number("h_w_m2k"), 0.015);
            Assert.Equal(1, mass / row.Number("hm_m_s"), 0.015);
        }
    }

    // Natural convection in air is 2 to 25 W/(m² K) (Incropera and DeWitt, Table 1.1, from memory); a split hardly warmer than the room sits at its foot.
    [Fact]
    public void Still_air_gives_the_natural_floor()
    {
        var floor = SurfaceTransfer.StillAir(SplitSize, 293.15);
        Assert.InRange(floor, 2, 4);
        Assert.Equal(floor, SurfaceTransfer.ConvectiveCoefficient(0, SplitSize, 293.15), 0.01 * floor);
    }

    [Fact]
    public void Convection_grows_with_speed_and_never_falls_below_either_part() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.03, 0.4], Gen.Double[-30, 90]).Sample((speed, size, celsius) =>
        {
            var kelvins = celsius + 273.15;
            var whole = SurfaceTransfer.ConvectiveCoefficient(speed, size, kelvins);
            return whole >= SurfaceTransfer.StillAir(size, kelvins) && whole >= SurfaceTransfer.CylinderInCrossFlow(speed, size, kelvins)
                && SurfaceTransfer.ConvectiveCoefficient(speed + 0.1, size, kelvins) > whole;
        });

    [Fact]
    public void Brisk_wind_leaves_forced_convection_alone() => Assert.Equal(
        1, SurfaceTransfer.ConvectiveCoefficient(3, SplitSize, 293.15) / SurfaceTransfer.CylinderInCrossFlow(3, SplitSize, 293.15), 0.001);

    // A wick loses as much heat to evaporation as convection brings it, h (T - T_w) = β L (p_sat(T_w) - p_v); with Le near 0.85 that is the
    // thermodynamic wet bulb within a few tenths of a kelvin (ASHRAE 2017, ch. 1).
    [Theory]
    [InlineData(10, 0.5)]
    [InlineData(20, 0.3)]
    [InlineData(30, 0.6)]
    public void Wick_with_our_coefficients_reads_the_wet_bulb(double celsius, double humidity)
    {
        double kelvins = celsius + 273.15, vapor = humidity * SaturationPressure.OverWater(kelvins);
        var wet = Psychrometrics.WetBulb(kelvins, Psychrometrics.HumidityRatio(vapor, Sea), Sea);
        var heat = SurfaceTransfer.ConvectiveCoefficient(3, 0.01, kelvins);
        var evaporation = SurfaceTransfer.VaporConductance(heat, kelvins, Sea) * (SaturationPressure.OverWater(wet) - vapor);
        var excess = evaporation * LatentHeat.OfEvaporation(wet) - heat * (kelvins - wet);
        Assert.InRange(excess / (heat * (kelvins - wet)), -0.02, 0.12);
    }

    // 4 ε σ T³ with ε 0.9 at 20 °C is 5.1 W/(m² K), as reference texts print it.
    [Fact]
    public void Radiation_near_20_degrees_is_five() => Assert.Equal(5.1, SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, 293.15), 0.05);
}
