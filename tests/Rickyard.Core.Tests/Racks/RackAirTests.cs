using CsCheck;
using NodaTime;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Racks;

public class RackAirTests
{
    private static readonly StackGeometry Stack = new(0.12, 0.4);
    private static readonly RackDescription Bare = new(RackCover.None, RackSun.Full, RackWind.Open);
    private static readonly HourlyWeather Year = SyntheticWeather.Year(NormalsCatalogue.Find("Des Moines").Value!, 1, new(2023, 1, 1, 0, 0), 8760);

    [Fact]
    public void Air_itself_is_that_outdoors()
    {
        var air = RackAir.Surroundings(Year, Bare, Stack);
        Assert.Equal(Year.Hours.Count, air.Length);
        for (var hour = 0; hour < air.Length; hour++)
        {
            Assert.Equal(Year.Hours[hour].Celsius + 273.15, air[hour].TemperatureKelvins, 1e-9);
            Assert.Equal(Year.Hours[hour].RelativeHumidity * Core.Air.SaturationPressure.OverWater(air[hour].TemperatureKelvins), air[hour].VaporPressure, 1e-9);
        }
    }

    [Fact]
    public void Better_cover_less_rain()
    {
        double[] sides = [.. Enum.GetValues<RackCover>().Select(cover => RackAir.Surroundings(Year, Bare with { Cover = cover }, Stack).Sum(hour => hour.RainOnSides))];
        double[] ends = [.. Enum.GetValues<RackCover>().Select(cover => RackAir.Surroundings(Year, Bare with { Cover = cover }, Stack).Sum(hour => hour.RainOnEnds))];
        Assert.True(sides[(int)RackCover.None] > 5 * sides[(int)RackCover.Top]);
        Assert.True(sides[(int)RackCover.Top] > sides[(int)RackCover.Tarp]);
        Assert.True(ends[(int)RackCover.None] > ends[(int)RackCover.Top] && ends[(int)RackCover.Top] > ends[(int)RackCover.Shed] && ends[(int)RackCover.Shed] > ends[(int)RackCover.Tarp]);
    }

    [Fact]
    public void End_grain_of_a_covered_stack_is_wetted_more_than_its_sides()
    {
        var air = RackAir.Surroundings(Year, Bare with { Cover = RackCover.Top }, Stack);
        Assert.True(air.Sum(hour => hour.RainOnEnds) > air.Sum(hour => hour.RainOnSides));
    }

    [Fact]
    public void Faces_never_take_more_rain_than_fell_on_the_top_and_blew_on_the_front()
    {
        var air = RackAir.Surroundings(Year, Bare, Stack);
        var caught = air.Sum(hour => hour.RainOnSides) * 3600 * Stack.SidesPerVolume * Stack.Height * Stack.Depth(1);
        Assert.InRange(caught / (Year.Hours.Sum(hour => hour.Rain) * Stack.Depth(1)), 0.9, 1.5);
    }

    [Fact]
    public void Driving_rain_agrees_with_the_published_relation()
    {
        // Lacy 1965: 0.222 m/s·mm/h free rain; one row, windward half of the ends, admittance 0.5, mean cosine 2/π
        var hour = One(new(10, 0.9, 5, 0, 2, 1e5), Bare);
        var before = 5 * Math.Pow(0.08, 0.2);
        Assert.Equal(0.222 * before * Math.Pow(2, 0.88) * 0.5 * 2 / Math.PI / 2, hour.RainOnEnds * 3600, 1e-9);
    }

    [Fact]
    public void Snow_wets_nothing_until_it_melts_and_then_is_all_there()
    {
        WeatherHour snow = new(-5, 0.9, 0, 0, 2, 1e5), thaw = new(4, 0.9, 0, 0, 0, 1e5);
        var air = RackAir.Surroundings(Year with { Hours = [.. Enumerable.Repeat(snow, 3), .. Enumerable.Repeat(thaw, 40)] }, Bare, Stack);
        Assert.All(air.Take(3), hour => Assert.Equal(0, hour.RainOnSides + hour.RainOnEnds));
        Assert.Equal(6, air.Sum(hour => hour.RainOnSides) * 3600 * Stack.SidesPerVolume * Stack.Height, 1e-9);
        Assert.Equal(0, air[^1].RainOnSides);
    }

    [Fact]
    public void Deeper_stack_slower_air_less_of_it_less_sun()
    {
        var rows = Enumerable.Range(1, 6).Select(count => One(new(20, 0.5, 4, 500, 0, 1e5), Bare with { Rows = count })).ToList();
        for (var row = 1; row < rows.Count; row++)
        {
            Assert.True(rows[row].FreshAir < rows[row - 1].FreshAir / 1.2);
            Assert.True(rows[row].ConvectiveCoefficient <= rows[row - 1].ConvectiveCoefficient);
            Assert.True(rows[row].AbsorbedRadiation < rows[row - 1].AbsorbedRadiation);
        }
    }

    [Fact]
    public void Tarp_passes_far_less_air_than_a_roof()
    {
        WeatherHour breeze = new(20, 0.5, 4, 500, 0, 1e5);
        Assert.True(One(breeze, Bare with { Cover = RackCover.Tarp }).FreshAir < 0.2 * One(breeze, Bare with { Cover = RackCover.Top }).FreshAir);
    }

    [Fact]
    public void Sun_warms_by_day_and_clear_sky_cools_at_night()
    {
        Assert.InRange(One(new(20, 0.5, 4, 600, 0, 1e5), Bare).AbsorbedRadiation, 10, 60);
        Assert.InRange(One(new(20, 0.5, 4, 0, 0, 1e5), Bare).AbsorbedRadiation, -5, -0.5);
        Assert.Equal(0, One(new(20, 0.5, 4, 0, 1, 1e5), Bare).AbsorbedRadiation);
    }

    [Fact]
    public void Any_weather_on_any_rack_gives_finite_air_that_is_never_less_than_none() =>
        Gen.Select(Gen.Double[-40, 50], Gen.Double[0, 1], Gen.Double[0, 60], Gen.Double[0, 1400], Gen.Double[0, 100], Gen.Enum<RackCover>(), Gen.Enum<RackSun>(), Gen.Int[1, 12])
            .Sample((celsius, humidity, wind, sun, rain, cover, light, rows) =>
            {
                var hour = One(new(celsius, humidity, wind, sun, rain, 1e5), new(cover, light, RackWind.Open, rows));
                return double.IsFinite(hour.AbsorbedRadiation) && hour.FreshAir > 0 && hour.RainOnEnds >= 0 && hour.RainOnSides >= 0 && hour.ConvectiveCoefficient > 1 && double.IsFinite(hour.FreshAir);
            });

    [Fact]
    public void Draws_of_the_uncertainty_have_its_spread_and_repeat()
    {
        var uncertainty = new RackUncertainty();
        var draws = Enumerable.Range(0, 4000).Select(uncertainty.Draw).ToList();
        Assert.Equal(uncertainty.Draw(17), draws[17]);
        Assert.Equal(0.5, Math.Sqrt(draws.Average(draw => Math.Pow(Math.Log(draw.Wind), 2))), 0.04);
        Assert.Equal(0, draws.Average(draw => Math.Log(draw.Rain)), 0.05);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(13)]
    public void Impossible_number_of_rows_is_a_problem(int rows) =>
        Assert.Contains("1 to 12", Assert.Single(new RackDescription(Rows: rows).Problems()).WhatToDo, StringComparison.Ordinal);

    [Fact]
    public void Indoor_air_has_no_sun_no_rain_and_no_end()
    {
        var air = IndoorAir.Surroundings(Temperature.FromCelsius(25), RelativeHumidity.FromPercent(30), 0.1);
        Assert.Equal(0.3 * 3169, air.VaporPressure, 3.0); // saturation at 25 °C: 3169 Pa (ASHRAE 2017, ch. 1, table 3)
        Assert.Equal(new Surroundings(298.15, air.VaporPressure, air.ConvectiveCoefficient), air);
        Assert.True(double.IsPositiveInfinity(air.FreshAir));
    }

    private static Surroundings One(WeatherHour hour, RackDescription rack) => RackAir.Surroundings(Year with { Hours = [hour] }, rack, Stack)[0];
}
