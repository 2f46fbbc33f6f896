using CsCheck;

using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class SaturationPressureTests
{
    private const double PascalsPerTorr = 101325.0 / 760;

    [Fact]
    public void Published_tables_over_water_and_ice_are_met_within_a_thousandth()
    {
        foreach (var row in ReferenceTable.Read("Air/saturation_pressure.csv"))
        {
            var kelvins = row.Number("temp_c") + Temperature.IcePointKelvins;
            var ours = row.Text("phase") == "ice" ? SaturationPressure.OverIce(kelvins) : SaturationPressure.OverWater(kelvins);
            foreach (var column in new[] { "iapws_pa", "ashrae_table_3_pa" })
                if (row.Has(column)) Assert.True(Math.Abs(ours / row.Number(column) - 1) < 1e-3, $"{row}: {ours}");
        }
    }

    // Facts of the trade (common practice, no source), to the digits they are told in; water boils at 99.97 °C on this scale.
    [Theory]
    [InlineData(30, 31.8, 0.05)]
    [InlineData(70, 234, 0.5)]
    [InlineData(100, 760, 1)]
    public void Pressures_told_in_the_trade_are_met(double celsius, double torr, double digits) =>
        Assert.Equal(torr, SaturationPressure.OverWater(celsius + Temperature.IcePointKelvins) / PascalsPerTorr, digits);

    // 12.8 torr at 61 °F is passed around (common practice, no source): it is 6.8 % too low and belongs to 59.0 °F.
    [Fact]
    public void Pressure_passed_around_for_61_fahrenheit_is_too_low()
    {
        var truth = SaturationPressure.OverWater(Temperature.FromFahrenheit(61).Kelvins) / PascalsPerTorr;
        Assert.Equal(13.74, truth, 0.01);
        Assert.Equal(0.068, 1 - 12.8 / truth, 0.001);
        Assert.Equal(59.0, Temperature.FromKelvins(SaturationPressure.Inverse(12.8 * PascalsPerTorr)).Fahrenheit, 0.05);
    }

    [Fact]
    public void Inverse_after_pressure_returns_the_temperature() => Gen.Double[-90, 180].Sample(celsius =>
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        var overWater = Math.Abs(SaturationPressure.InverseOverWater(SaturationPressure.OverWater(kelvins)) - kelvins);
        var overEither = Math.Abs(SaturationPressure.Inverse(SaturationPressure.Of(kelvins)) - kelvins);
        return overWater < 1e-7 && overEither < (Math.Abs(celsius) < 0.01 ? 2e-3 : 1e-7);
    });

    // Ice and water formulas leave a gap of 0.1 Pa at 0 °C.
    [Fact]
    public void Inverse_in_the_gap_between_ice_and_water_stays_at_zero()
    {
        for (var pascals = 611.10; pascals < 611.25; pascals += 0.001)
            Assert.Equal(Temperature.IcePointKelvins, SaturationPressure.Inverse(pascals), 2e-3);
    }

    [Fact]
    public void Slope_is_the_derivative() => Gen.Double[-60, 120].Where(celsius => Math.Abs(celsius) > 0.01).Sample(celsius =>
    {
        const double step = 1e-3;
        var kelvins = celsius + Temperature.IcePointKelvins;
        var difference = (SaturationPressure.Of(kelvins + step) - SaturationPressure.Of(kelvins - step)) / (2 * step);
        return Math.Abs(SaturationPressure.Slope(kelvins) / difference - 1) < 1e-6;
    });
}
