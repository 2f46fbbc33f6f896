using Rickyard.Core.Weather;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

/// <summary>Real files beside the repository; the expected means are those of the files' own description, to its digits.</summary>
public class RealFilesTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("USA_TX_Austin-Mueller.Muni.AP.722540_TMY3.epw", 20.5, 71, 3.5)]
    [InlineData("USA_FL_Tampa.Intl.AP.722110_TMY3.epw", 22.3, 75, 3.3)]
    [InlineData("USA_GA_Atlanta-Hartsfield-Jackson.Intl.AP.722190_TMY3.epw", 16.7, 66, 4.0)]
    [InlineData("USA_MS_Tupelo.Muni-C.D.Lemons.AP.723320_TMY3.epw", 16.6, 73, 3.0)]
    [InlineData("USA_MO_Kansas.City.Intl.AP.724460_TMY3.epw", 12.1, 68, 4.9)]
    [InlineData("USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw", 10.0, 70, 4.6)]
    [InlineData("USA_IA_Dubuque.Rgnl.AP.725470_TMY3.epw", 7.7, 73, 4.5)]
    [InlineData("USA_CO_Golden-NREL.724666_TMY3.epw", 9.8, 54, 4.0)]
    [InlineData("USA_CA_San.Francisco.Intl.AP.724940_TMY3.epw", 13.8, 74, 4.7)]
    [InlineData("USA_WA_Seattle-Tacoma.Intl.AP.727930_TMY3.epw", 11.2, 74, 3.8)]
    [InlineData("USA_AK_Anchorage-Merrill.Field.702735_TMY3.epw", 4.5, 72, 1.7)]
    [InlineData("GBR_ENG_London.City.AP.037683_TMYx.2007-2021.epw", 12.3, 73, 4.1)]
    [InlineData("SWE_VG_Gothenburg-Landvetter.AP.025260_TMYx.2007-2021.epw", 7.5, 82, 4.0)]
    [InlineData("POL_Szczecin.122050_IMGW.epw", 8.8, 81, 3.4)]
    [InlineData("tmy_47.360_2.080_2005_2020.epw", 12.3, 71, 2.8)]
    [InlineData("mannheim.epw", 12.4, 71, 2.6)]
    [InlineData("CAN_ON_Windsor.715380_CWEC.epw", 9.2, 73, 4.7)]
    [InlineData("NZL_Auckland-Auckland.AK.931190_NIWA.epw", 15.3, 79, 4.8)]
    public void Epw_real_file_gives_a_full_typical_year(string file, double celsius, double humidityPercent, double wind)
    {
        var weather = Read(null, "epw", file);
        Assert.True(weather.Typical);
        Assert.Equal(TypicalCalendarHours, weather.Hours.Count);
        Assert.Equal(celsius, weather.Hours.Average(hour => hour.Celsius), 0.06);
        Assert.Equal(humidityPercent, 100 * weather.Hours.Average(hour => hour.RelativeHumidity), 0.6);
        Assert.Equal(wind, weather.Hours.Average(hour => hour.WindSpeed), 0.06);
        Assert.InRange(weather.Hours.Sum(hour => hour.Rain), 100, 2000);
        Assert.All(weather.Hours, hour => Assert.InRange(hour.RelativeHumidity, 0, 1));
    }

    [Fact]
    public void Epw_complete_rain_is_kept()
    {
        Assert.Equal(901, Read(null, "epw", "USA_TX_Austin-Mueller.Muni.AP.722540_TMY3.epw").Hours.Sum(hour => hour.Rain), 5.0);
        Assert.Equal(658, Read(null, "epw", "GBR_ENG_London.City.AP.037683_TMYx.2007-2021.epw").Hours.Sum(hour => hour.Rain), 1.0);
    }

    [Theory]
    [InlineData("mannheim.epw", "Rain is zero in all 8760 hours")]
    [InlineData("CAN_ON_Windsor.715380_CWEC.epw", "Detroit")]
    [InlineData("NZL_Auckland-Auckland.AK.931190_NIWA.epw", "Rain is a guess")]
    [InlineData("POL_Szczecin.122050_IMGW.epw", "Rain is missing in 8760 of 8760 hours. Rain is drawn from the monthly normals of Berlin")]
    [InlineData("SWE_VG_Gothenburg-Landvetter.AP.025260_TMYx.2007-2021.epw", "Temperature jumps by more than 15 K")]
    [InlineData("CAN_ON_Windsor.715380_CWEC.epw", "of 100 to 110 % taken as 100 %")]
    public void Epw_oddities_are_said(string file, string note) =>
        Assert.Contains(Read(null, "epw", file).Notes, said => said.Contains(note, StringComparison.Ordinal));

    [Theory]
    [InlineData("dublin-airport", 10.1, 82, 5.6, 662)]
    [InlineData("shannon-airport", 10.9, 84, 4.6, 1069)]
    [InlineData("valentia-observatory", 11.3, 82, 4.8, 1598)]
    [InlineData("malin-head", 10.3, 81, 7.8, 1147)]
    public void Irish_hourly_table_is_read_with_its_units(string station, double celsius, double humidityPercent, double wind, double rain)
    {
        var weather = Read(new(Longitude: -8, Latitude: 53), "observed", "met-eireann", $"met-eireann-hourly-2017-{station}.csv");
        Assert.Equal(8760, weather.Hours.Count);
        AssertMeans(weather, celsius, humidityPercent, wind, rain);
    }

    [Fact]
    public void Open_meteo_second_block_is_left_out()
    {
        var weather = Read(null, "observed", "open-meteo", "open-meteo-52.55N13.41E38m.csv");
        Assert.Equal(8784, weather.Hours.Count);
        AssertMeans(weather, 11.2, 75, 3.3, 565);
        Assert.Contains(weather.Notes, note => note.Contains("is not read", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("EWR", 55.6, 63, 9.4, 44)]
    [InlineData("JFK", 54.5, 65, 11.5, 35)]
    [InlineData("LGA", 55.8, 59, 10.6, 38)]
    public void Us_airport_table_is_read_in_its_documented_units(string station, double fahrenheit, double humidityPercent, double milesPerHour, double inches)
    {
        var weather = Read(new(Station: station, Latitude: 40.7, Longitude: -74.0), "observed", "nycflights13", "weather.csv");
        AssertMeans(weather, (fahrenheit - 32) / 1.8, humidityPercent, milesPerHour * 0.44704, inches * 25.4);
        if (station == "EWR") Assert.Contains(weather.Notes, note => note.Contains("wind outside 0 to 60 m/s", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("725300-2016.gz", 8784, 11.4, 70, 4.3, 694)]
    [InlineData("725300-2017.gz", 8760, 11.5, 65, 4.5, 982)]
    [InlineData("725300-2018.gz", 8760, 10.6, 68, 4.2, 976)]
    public void Isd_lite_is_unpacked_and_read(string file, int hours, double celsius, double humidityPercent, double wind, double rain)
    {
        var weather = Read(new("Chicago O'Hare", 41.98, -87.92, 201), "observed", "isd-lite", file);
        Assert.Equal(hours, weather.Hours.Count);
        AssertMeans(weather, celsius, humidityPercent, wind, rain);
    }

    [Fact]
    public void Daily_summaries_become_hours()
    {
        var sitka = Read(new(Latitude: 57.05, Longitude: -135.36), "observed", "ghcn-daily", "sitka_weather_2018_full.csv");
        Assert.Equal(24 * 407, sitka.Hours.Count);
        Assert.Equal((51.0 + 41) / 2, sitka.Hours.Average(hour => hour.Celsius) * 1.8 + 32, 1.0);
        Assert.Equal(7.5 * 0.44704, sitka.Hours.Average(hour => hour.WindSpeed), 0.1);
    }

    [Fact]
    public void Daily_table_without_units_asks_for_them()
    {
        RequireFiles();
        var result = WeatherReader.Read("seattle.csv", Text("observed", "vega-datasets", "seattle-weather.csv"));
        Assert.Null(result.Value);
        Assert.Contains(result.Problems, problem => problem.WhatIsWrong.Contains("does not say its unit", StringComparison.Ordinal));
    }

    private const int TypicalCalendarHours = 8760;

    private static void AssertMeans(HourlyWeather weather, double celsius, double humidityPercent, double wind, double rain)
    {
        Assert.Equal(celsius, weather.Hours.Average(hour => hour.Celsius), 0.2);
        Assert.Equal(humidityPercent, 100 * weather.Hours.Average(hour => hour.RelativeHumidity), 0.7);
        Assert.Equal(wind, weather.Hours.Average(hour => hour.WindSpeed), 0.1);
        Assert.Equal(rain, weather.Hours.Sum(hour => hour.Rain), 0.05 * rain); // up to about 1 % of the hours is drawn
    }

    private HourlyWeather Read(WeatherSite? site, params string[] parts)
    {
        RequireFiles();
        var result = WeatherReader.Read(parts[^1], Text(parts), site);
        Assert.True(result.TryGet(out var weather), string.Join("\n", result.Problems));
        foreach (var note in weather.Notes) output.WriteLine(note);
        return weather;
    }

    private static string Text(params string[] parts) => WeatherText.Decode(SharedWeather.Read(parts), parts[^1]).Value!;

    private static void RequireFiles() => Assert.SkipUnless(SharedWeather.Folder is not null, "SKIPPED: no folder shared/weather beside the repository, so no real files were read.");
}
