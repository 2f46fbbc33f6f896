using CsCheck;

using Rickyard.Core.Quantities;
using Rickyard.Core.Wood;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Wood;

public sealed class SorptionIsothermTests
{
    private static readonly Gen<(double Celsius, double Activity)> AnyState = Gen.Select(Gen.Double[-50, 120], Gen.Double[0.001, 0.999]);

    // The printed table is rounded to 0.1 and was made with the Fahrenheit constants, which differ from the metric ones by up to 0.02;
    // remembered cells (10 of 361) may be 0.07 off.
    [Fact]
    public void Every_cell_of_the_handbook_table_is_met()
    {
        var rows = ReferenceTable.Read("Wood/emc_table_4_2.csv");
        Assert.Equal(361, rows.Count);
        foreach (var row in rows)
            Assert.True(Math.Abs(Percent(row) - row.Number("emc_percent")) < 0.075, $"{row}: {Percent(row)}");
    }

    [Fact]
    public void Independent_published_points_are_met()
    {
        foreach (var row in ReferenceTable.Read("Wood/emc_check_points.csv"))
            Assert.True(Math.Abs(Percent(row) - row.Number("emc_percent")) <= row.Number("tolerance_percent"), $"{row}: {Percent(row)}");
    }

    [Fact]
    public void Activity_after_moisture_returns_the_activity() => AnyState.Sample(given =>
    {
        var isotherm = SorptionIsotherm.At(given.Celsius);
        return Math.Abs(isotherm.Activity(isotherm.Moisture(given.Activity)) - given.Activity) < 1e-10;
    });

    [Fact]
    public void Slope_is_the_derivative_and_above_zero() => AnyState.Sample(given =>
    {
        const double step = 1e-6;
        var isotherm = SorptionIsotherm.At(given.Celsius);
        var difference = (isotherm.Moisture(given.Activity + step) - isotherm.Moisture(given.Activity - step)) / (2 * step);
        return isotherm.Slope(given.Activity) > 0 && Math.Abs(isotherm.Slope(given.Activity) / difference - 1) < 1e-5;
    });

    [Fact]
    public void Warmer_wood_holds_less_at_the_same_humidity() => Gen.Select(Gen.Double[12, 100], Gen.Double[0.05, 1]).Sample((celsius, activity) =>
        SorptionIsotherm.At(celsius + 1).Moisture(activity) < SorptionIsotherm.At(celsius).Moisture(activity));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 1)]
    [InlineData(-0.1, 0)]
    public void Activity_beyond_the_isotherm_is_held(double moisture, double activity) => Assert.Equal(activity, SorptionIsotherm.At(20).Activity(moisture));

    // Followed below the printed range the polynomials lose 6 points of fibre saturation by -40 °C; held, they keep it.
    [Fact]
    public void Cold_isotherm_is_that_of_the_first_printed_row()
    {
        Assert.Equal(SorptionIsotherm.At(-10.0 / 9), SorptionIsotherm.At(-40));
        Assert.Equal(0.289, SorptionIsotherm.At(-40).Saturation, 0.001);
    }

    private static double Percent(ReferenceRow row) =>
        100 * SorptionIsotherm.At(Temperature.FromFahrenheit(row.Number("temp_f")).Celsius).Moisture(row.Number("rh_percent") / 100);
}
