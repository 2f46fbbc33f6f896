using System.Globalization;
using NodaTime;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

public class CsvWeatherReaderTests
{
    private static readonly LocalDateTime Start = new(2024, 4, 15, 0, 0);

    [Fact]
    public void Home_station_table_with_semicolons_and_decimal_commas_is_read()
    {
        var weather = Good("Zeit;Temperatur (°C);Luftfeuchte (%);Windgeschwindigkeit (km/h);Regen (mm)\n" + Rows(48, (time, _) =>
            $"{time.Day:00}.{time.Month:00}.{time.Year} {time.Hour:00}:00;10,5;80;7,2;0,2"));
        Assert.Equal(10.5, weather.Hours[3].Celsius);
        Assert.Equal(0.8, weather.Hours[3].RelativeHumidity);
        Assert.Equal(2, weather.Hours[3].WindSpeed, 1e-9);
        Assert.Equal(0.2, weather.Hours[3].Rain);
    }

    [Fact]
    public void Imperial_units_in_the_header_are_converted()
    {
        var weather = Good("Date Time,Outdoor Temperature(°F),Outdoor Humidity(%),Wind Speed(mph),Rain(in),Pressure(inHg)\n" + Rows(30, (time, _) => $"{Iso(time)},50,60,10,0.01,29.92"));
        Assert.Equal(10, weather.Hours[0].Celsius, 1e-9);
        Assert.Equal(4.4704, weather.Hours[0].WindSpeed, 1e-9);
        Assert.Equal(0.254, weather.Hours[0].Rain, 1e-9);
        Assert.Equal(101321, weather.Hours[0].StationPressure, 3.0);
    }

    [Fact]
    public void Units_nowhere_said_are_asked_for_all_at_once()
    {
        var problems = Bad("time,temperature,humidity,wind speed,rain\n" + Rows(30, (time, _) => $"{Iso(time)},50,60,10,0"));
        Assert.Equal(3, problems.Count);
        Assert.All(problems, problem => Assert.Equal("home.csv, line 1", problem.Field));
        Assert.Contains(problems, problem => problem.WhatIsWrong == "Column 'temperature' does not say its unit." && problem.WhatToDo.Contains("°C, °F or K", StringComparison.Ordinal));
    }

    [Fact]
    public void Humidity_that_may_be_a_fraction_is_asked_for() =>
        Assert.Contains("humidity", Assert.Single(Bad("time,temperature (°C),humidity,wind speed (m/s),rain (mm)\n" + Rows(30, (time, _) => $"{Iso(time)},10,0.6,3,0"))).WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Unknown_unit_is_refused_with_those_known() =>
        Assert.Contains("m/s, km/h, mph or kn", Assert.Single(Bad("time,temperature (°C),humidity (%),wind speed (Bft),rain (mm)\n" + Rows(30, (time, _) => $"{Iso(time)},10,60,3,0"))).WhatToDo, StringComparison.Ordinal);

    [Fact]
    public void Five_minute_rows_are_averaged_and_their_rain_summed()
    {
        var weather = Good("time,temp_c,rhum_percent,wind_speed_mps,rain_mm\n" + string.Concat(Enumerable.Range(1, 12 * 24).Select(row =>
            FormattableString.Invariant($"{Iso(Start.PlusMinutes(5 * row))},{row % 12},50,2,0.1\n"))));
        Assert.Equal(24, weather.Hours.Count);
        Assert.Equal(Start, weather.Start);
        Assert.Equal(5.5, weather.Hours[4].Celsius, 1e-9);
        Assert.Equal(1.2, weather.Hours[4].Rain, 1e-9);
        Assert.Contains("5 min apart", string.Join(' ', weather.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Midnight_written_as_24_belongs_to_the_day_before()
    {
        var weather = Good(Header + Rows(48, (time, hour) => time.Hour == 0
            ? $"{Day(time.PlusDays(-1))} 24:00,{hour},60,3,0" : $"{Iso(time)},{hour},60,3,0"));
        Assert.Equal(48, weather.Hours.Count);
        Assert.Equal(Enumerable.Range(0, 48).Select(hour => (double)hour), weather.Hours.Select(hour => hour.Celsius));
    }

    [Fact]
    public void Rows_absent_out_of_order_or_twice_are_put_right_and_said()
    {
        var rows = Rows(100, (time, hour) => $"{Iso(time)},{hour % 24},60,3,0.5").Split('\n', StringSplitOptions.RemoveEmptyEntries).ToList();
        rows.RemoveRange(40, 3);
        rows.Add(rows[10]);
        rows.Reverse();
        var weather = Good(Header + string.Join('\n', rows), new(Latitude: 41.5, Longitude: -93.6));
        Assert.Equal(100, weather.Hours.Count);
        Assert.Equal(0.5, weather.Hours[10].Rain);
        Assert.Equal(weather.Hours[39].Celsius + 1, weather.Hours[40].Celsius, 1e-9);
        Assert.Contains(weather.Notes, note => note.StartsWith("1 rows are written twice", StringComparison.Ordinal));
        Assert.Contains(weather.Notes, note => note.StartsWith("Temperature missing in 3 of 100 hours: 3 filled along a straight line", StringComparison.Ordinal));
    }

    [Fact]
    public void Day_without_values_is_filled_from_its_neighbours()
    {
        var weather = Good(Header + Rows(240, (time, hour) => hour is >= 120 and < 144 ? $"{Iso(time)},NA,NaN,,0" : $"{Iso(time)},{hour % 24},60,3,0"));
        Assert.Equal(7, weather.Hours[127].Celsius, 1e-9);
        Assert.Contains(weather.Notes, note => note.Contains("24 from the same hour of neighbouring days", StringComparison.Ordinal));
    }

    [Fact]
    public void Leap_day_is_a_day_like_any_other()
    {
        var start = new LocalDateTime(2024, 2, 28, 1, 0);
        var weather = Good(Header + string.Concat(Enumerable.Range(0, 72).Select(hour => $"{Iso(start.PlusHours(hour))},10,60,3,0\n")));
        Assert.Equal(72, weather.Hours.Count);
        Assert.Contains("'2023-02-29 01:00' is not a time", Assert.Single(Bad(Header + "2023-02-29 01:00,1,60,3,0\n")).WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Slashed_dates_are_read_where_a_day_above_12_shows_the_order()
    {
        Assert.Equal(new LocalDateTime(2024, 4, 12, 23, 0), Good(Header + "4/13/2024 12:00 AM,1,60,3,0\n4/13/2024 1:00 AM,1,60,3,0\n").Start);
        Assert.Equal(new LocalDateTime(2024, 4, 12, 23, 0), Good(Header + "13/4/2024 0:00,1,60,3,0\n13/4/2024 1:00,1,60,3,0\n").Start);
        Assert.Contains("which number is the month", Assert.Single(Bad(Header + "3/4/2024 0:00,1,60,3,0\n")).WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Times_with_offsets_become_standard_time()
    {
        var summer = Good(Header + "2024-07-01T02:00+02:00,1,60,3,0\n2024-07-01T03:00+02:00,2,60,3,0\n", new(Latitude: 52.5, Longitude: 13.4));
        Assert.Equal(new LocalDateTime(2024, 7, 1, 0, 0), summer.Start);
        var utc = Good(Header + "2024-07-01T02:00Z,1,60,3,0\n2024-07-01T03:00Z,2,60,3,0\n", new(Latitude: 41.5, Longitude: -93.6));
        Assert.Equal(new LocalDateTime(2024, 6, 30, 19, 0), utc.Start);
    }

    [Fact]
    public void Legend_after_the_rows_is_left_out_but_a_cut_row_is_not()
    {
        const string Pvgis = "Latitude (decimal degrees): 47.360\nLongitude (decimal degrees): 2.080\nElevation (m): 129\nmonth,year\n1,2016\n";
        var rows = "time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\n" + string.Concat(Enumerable.Range(0, 48).Select(hour =>
            $"201801{1 + hour / 24:00}:{hour % 24:00}00,5.0,80.0,100.0,0.0,0.0,280.0,3.5,200.0,99000.0\n"));
        var result = WeatherReader.Read("home.csv", Pvgis + rows + "\nT2m: 2-m air temperature (degree Celsius)\nRH: relative humidity (%)\n", new(Latitude: 52.5, Longitude: 13.4));
        Assert.True(result.TryGet(out var weather), string.Join('\n', result.Problems));
        Assert.Equal(0.8, weather.Hours[5].RelativeHumidity, 1e-9);
        Assert.Equal(100, weather.Hours[5].GlobalSun);
        Assert.Equal(99000, weather.Hours[5].StationPressure);
        Assert.Contains("has 3 fields; the header has 5", Assert.Single(Bad(Header + "2024-04-15 01:00,1,60,3,0\n2024-04-15 02:00,1,6")).WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Meteostat_names_carry_their_documented_units()
    {
        var weather = Good("date,hour,temp,dwpt,rhum,prcp,snow,wdir,wspd,wpgt,pres,tsun,coco\n" + string.Concat(Enumerable.Range(0, 30).Select(hour =>
            $"2024-04-{15 + hour / 24},{hour % 24},10.0,5.0,70,0.4,,200,36.0,,1015.0,,3\n")));
        Assert.Equal(30, weather.Hours.Count);
        Assert.Equal(10, weather.Hours[0].WindSpeed, 1e-9);
        Assert.Contains(weather.Notes, note => note.Contains("Meteostat", StringComparison.Ordinal));
    }

    [Fact]
    public void No_rain_and_no_place_asks_for_the_place()
    {
        var problem = Assert.Single(Bad("time,temperature (°C),humidity (%)\n" + Rows(48, (time, _) => $"{Iso(time)},10,60")));
        Assert.Contains("where it was measured", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Temperature_and_humidity_alone_do_when_the_place_is_said()
    {
        var weather = Good("time,temperature (°C),humidity (%)\n" + Rows(480, (time, _) => $"{Iso(time)},10,60"), WeatherSite.At(NormalsCatalogue.Find("Des Moines").Value!));
        Assert.InRange(weather.Hours.Average(hour => hour.WindSpeed), 3, 7);
        Assert.Contains(weather.Notes, note => note.Contains("monthly mean wind of Des Moines", StringComparison.Ordinal));
        Assert.Contains(weather.Notes, note => note.Contains("Rain is missing in 480 of 480 hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Word_in_a_number_column_is_refused_with_line_and_column()
    {
        var problem = Assert.Single(Bad(Header + "2024-04-15 01:00,1,60,3,0\n2024-04-15 02:00,mild,60,3,0\n"));
        Assert.Equal("home.csv, line 3", problem.Field);
        Assert.Contains("'mild'", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Header_alone_is_refused() => Assert.Contains("no rows", Assert.Single(Bad(Header)).WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Three_hourly_rain_is_shared_by_its_hours()
    {
        var weather = Good(Header + string.Concat(Enumerable.Range(1, 40).Select(row => $"{Iso(Start.PlusHours(3 * row))},10,60,3,0.6\n")));
        Assert.Equal(118, weather.Hours.Count);
        Assert.All(weather.Hours.Skip(1), hour => Assert.Equal(0.2, hour.Rain, 1e-9)); // the first row has no hours before it
        Assert.Equal(40 * 0.6, weather.Hours.Sum(hour => hour.Rain), 1e-9);
    }

    private const string Header = "time,temperature (°C),humidity (%),wind speed (m/s),rain (mm)\n";

    private static string Rows(int hours, Func<LocalDateTime, int, string> row) =>
        string.Concat(Enumerable.Range(0, hours).Select(hour => row(Start.PlusHours(hour + 1), hour) + "\n"));

    private static string Iso(LocalDateTime time) => time.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Day(LocalDateTime time) => time.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static HourlyWeather Good(string text, WeatherSite? site = null)
    {
        var result = WeatherReader.Read("home.csv", text, site);
        Assert.True(result.TryGet(out var weather), string.Join("\n", result.Problems));
        return weather;
    }

    private static IReadOnlyList<Problem> Bad(string text) => WeatherReader.Read("home.csv", text).Problems;
}
