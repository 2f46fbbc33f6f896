using CsCheck;

using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Testing;

using Xunit;

namespace Rickyard.Core.Tests.Air;

public sealed class MoistAirTests
{
    private static readonly Pressure Sea = Pressure.StandardAtmosphere;

    // The ice formula lies 0.1 Pa, a hundredth of a percent, below the water formula at 0 °C; undercooled air there falls into the gap.
    private const double GapAtZero = 1.1e-4;

    private static readonly Gen<(double Celsius, double Humidity, double Metres)> AnyAir =
        Gen.Select(Gen.Double[-40, 110], Gen.Double[0.001, 1], Gen.Double[-400, 5000]);

    // ASHRAE Handbook Fundamentals 2017, ch. 1, Example 1: read off the chart of real air, to a division of it.
    [Fact]
    public void Handbook_example_of_40_dry_and_20_wet_is_met()
    {
        var air = Given(MoistAir.FromWetBulb(Temperature.FromCelsius(40), Temperature.FromCelsius(20), Sea));
        Assert.Equal(0.0065, air.HumidityRatio.Fraction, 0.0001);
        Assert.Equal(0.14, air.RelativeHumidity.Fraction, 0.005);
        Assert.Equal(7, air.DewPoint.Celsius, 0.5);
        Assert.Equal(56.7e3, air.Enthalpy, 150.0);
        Assert.Equal(0.896, air.SpecificVolume, 0.0005);
    }

    // Spreadsheet values of ASHRAE eq. 33 and 35 in the tests of an open psychrometric library, at 95461 Pa; its tolerance is 0.03 %.
    [Theory]
    [InlineData(30, 25, 0.0192281274)]
    [InlineData(-1, -5, 0.0012039982)]
    public void Humidity_ratio_from_wet_bulb_meets_the_spreadsheet(double dry, double wet, double ratio)
    {
        var air = Given(MoistAir.FromWetBulb(Temperature.FromCelsius(dry), Temperature.FromCelsius(wet), Pressure.FromPascals(95461)));
        Assert.Equal(ratio, air.HumidityRatio.Fraction, 3e-4 * ratio);
    }

    // The same tests: wet bulb at 7 °C, 61 %, 100 kPa; that library's tolerance is 0.001 °C.
    [Fact]
    public void Wet_bulb_meets_the_spreadsheet() =>
        Assert.Equal(3.92667434, At(7, 0.61, Pressure.FromPascals(100000)).WetBulb.Celsius, 0.001);

    [Fact]
    public void Enthalpy_and_volume_meet_the_spreadsheet()
    {
        Assert.Equal(81316, Psychrometrics.Enthalpy(303.15, 0.02), 0.5);
        Assert.Equal(0.940855374, Psychrometrics.SpecificVolume(303.15, 0.02, 95461), 2e-6);
    }

    // ASHRAE 2017, ch. 1, Table 2 is of real gases; the ideal mixture lies below by the stated share.
    [Theory]
    [InlineData(25, 0.020173, 0.006)]
    [InlineData(50, 0.086863, 0.007)]
    [InlineData(85, 0.838105, 0.013)]
    public void Saturated_air_holds_a_little_less_than_real_air(double celsius, double published, double atMost)
    {
        var ratio = At(celsius, 1, Sea).HumidityRatio.Fraction;
        Assert.InRange(1 - ratio / published, 0, atMost);
    }

    // ASHRAE 2017, ch. 1, Table 2: enthalpy of saturated air, kJ/kg, real gas.
    [Theory]
    [InlineData(25, 76.504)]
    [InlineData(50, 275.353)]
    public void Saturated_enthalpy_is_near_the_handbook(double celsius, double published) =>
        Assert.Equal(1, At(celsius, 1, Sea).Enthalpy / 1000 / published, 0.006);

    [Fact]
    public void Every_property_meets_the_general_purpose_package()
    {
        foreach (var row in ReferenceTable.Read("Air/psychrolib.csv"))
        {
            var air = new MoistAir(
                Temperature.FromCelsius(row.Number("temp_c")),
                Pressure.FromPascals(row.Number("vapor_pressure_pa")),
                Pressure.FromPascals(row.Number("pressure_pa")));
            AssertNear(row, "humidity_ratio", air.HumidityRatio.Fraction, 1e-7);
            AssertNear(row, "enthalpy_j_kg", air.Enthalpy, 1e-7);
            AssertNear(row, "volume_m3_kg", air.SpecificVolume, 1e-5);
            AssertNear(row, "density_kg_m3", air.Density.KilogramsPerCubicMetre, 1e-5);
            Assert.True(Math.Abs(air.DewOrFrostPoint.Celsius - row.Number("dew_point_c")) < 0.002, $"{row}: {air.DewOrFrostPoint.Celsius}");
            if (row.Has("wet_bulb_c")) AssertWetBulb(row, air);
        }
    }

    // Found as a random case: saturated air a hair below 0 °C.
    [Fact]
    public void Air_in_the_gap_between_ice_and_water_has_its_wet_bulb_at_zero() => Assert.Equal(0, At(-3.5e-9, 1, Sea).WetBulb.Celsius, 1e-8);

    [Fact]
    public void Every_way_in_and_out_returns_the_same_air() => AnyAir.Sample(given =>
    {
        var pressure = StandardPressure.AtElevation(given.Metres);
        var temperature = Temperature.FromCelsius(given.Celsius);
        if (!MoistAir.FromRelativeHumidity(temperature, RelativeHumidity.FromFraction(given.Humidity), pressure).TryGet(out var air)) return;
        AssertSame(air, Given(MoistAir.FromHumidityRatio(temperature, air.HumidityRatio, pressure)), 1e-9);
        AssertSame(air, Given(MoistAir.FromDewPoint(temperature, air.DewPoint, pressure)), 1e-7);
        AssertSame(air, Given(MoistAir.FromVaporPressure(temperature, air.VaporPressure, pressure)), 1e-12);
        AssertSame(air, Given(MoistAir.FromWetBulb(temperature, air.WetBulb, pressure)), Math.Abs(air.WetBulb.Celsius) < 1e-3 ? GapAtZero : 1e-6);
    });

    [Fact]
    public void Wet_bulb_lies_between_dew_point_and_dry_bulb() => AnyAir.Sample(given =>
    {
        var temperature = Temperature.FromCelsius(given.Celsius);
        var humidity = RelativeHumidity.FromFraction(given.Humidity);
        if (!MoistAir.FromRelativeHumidity(temperature, humidity, StandardPressure.AtElevation(given.Metres)).TryGet(out var air)) return true;
        double low = Math.Min(air.DewOrFrostPoint.Kelvins, air.Temperature.Kelvins), high = Math.Max(air.DewOrFrostPoint.Kelvins, air.Temperature.Kelvins);
        return air.WetBulb.Kelvins >= low - 0.1 && air.WetBulb.Kelvins <= high + 0.01;
    });

    [Fact]
    public void Air_saturated_over_ice_has_82_percent_over_water_at_minus_20()
    {
        var temperature = Temperature.FromCelsius(-20);
        var air = Given(MoistAir.FromVaporPressure(temperature, Pressure.FromPascals(SaturationPressure.OverIce(temperature.Kelvins)), Sea));
        Assert.Equal(0.82, air.RelativeHumidity.Fraction, 0.005);
        Assert.Equal(-20, air.DewOrFrostPoint.Celsius, 1e-6);
        Assert.True(air.DewPoint.Kelvins < air.DewOrFrostPoint.Kelvins);
    }

    private static MoistAir At(double celsius, double humidity, Pressure pressure) =>
        Given(MoistAir.FromRelativeHumidity(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), pressure));

    private static MoistAir Given(Result<MoistAir> result) =>
        result.TryGet(out var air) ? air : throw new InvalidOperationException(string.Join(" ", result.Problems));

    private static void AssertNear(ReferenceRow row, string column, double ours, double relative) =>
        Assert.True(Math.Abs(ours - row.Number(column)) <= relative * Math.Abs(row.Number(column)), $"{row}: {column} {ours}");

    // Near 0 °C a wet wick and an iced wick may both be steady; the package then takes the ice and we the water.
    private static void AssertWetBulb(ReferenceRow row, MoistAir air)
    {
        double theirs = row.Number("wet_bulb_c"), ours = air.WetBulb.Celsius;
        var eitherIsSteady = theirs is > -0.6 and < 0 && ours >= 0;
        var ratio = Psychrometrics.HumidityRatioFromWetBulb(air.Temperature.Kelvins, theirs + Temperature.IcePointKelvins, air.Pressure.Pascals);
        Assert.True(eitherIsSteady ? Math.Abs(ratio - air.HumidityRatio.Fraction) < 1e-6 : Math.Abs(ours - theirs) < 0.002, $"{row}: {ours}");
    }

    private static void AssertSame(MoistAir expected, MoistAir actual, double relative) =>
        Assert.Equal(1, actual.VaporPressure.Pascals / expected.VaporPressure.Pascals, relative);
}
