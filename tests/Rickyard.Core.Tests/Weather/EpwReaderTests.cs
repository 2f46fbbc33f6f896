using System.Text;
using NodaTime;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

public class EpwReaderTests
{
    [Fact]
    public void Plain_year_is_read_as_it_stands()
    {
        var weather = Good(EpwText.Year());
        Assert.True(weather.Typical);
        Assert.Equal("Anyplace, IA, USA", weather.Name);
        Assert.Equal(new WeatherHour(10, 0.7, 3, 100, 0.1, 98000), weather.Hours[0]);
        Assert.Equal(14, weather.Hours[8].Celsius); // hour 9 ends at 9:00
        Assert.Empty(weather.Notes);
    }

    [Theory]
    [InlineData(6, "99.9")]
    [InlineData(6, "99.90")]
    [InlineData(6, "")]
    [InlineData(8, "999")]
    [InlineData(21, "999.0")]
    [InlineData(33, "999")]
    [InlineData(9, "999999")]
    public void Missing_code_is_filled_and_said(int field, string code)
    {
        var weather = Good(EpwText.Year((hour, fields) => fields[field] = hour == 100 ? code : fields[field]));
        Assert.Equal(8760, weather.Hours.Count);
        Assert.Equal(10, weather.Hours[100].Celsius, 5.0);
        Assert.InRange(weather.Hours[100].WindSpeed, 2, 4);
        if (field != 9 && field != 8) Assert.Single(weather.Notes);
    }

    [Fact]
    public void Missing_humidity_is_taken_from_the_dew_point()
    {
        var weather = Good(EpwText.Year((hour, fields) => fields[8] = hour == 100 ? "999" : fields[8]));
        Assert.Equal(0.711, weather.Hours[100].RelativeHumidity, 0.002); // 5.0 over 10.0 °C: 8.73 / 12.28 hPa
        Assert.Empty(weather.Notes);
    }

    [Fact]
    public void Impossible_wind_is_refused_filled_and_said_with_its_line()
    {
        var weather = Good(EpwText.Year((hour, fields) => fields[21] = hour == 200 ? "468.6" : fields[21]));
        Assert.Equal(3, weather.Hours[200].WindSpeed, 1e-9);
        Assert.Contains(weather.Notes, note => note.Contains("(first 468.6, line 209)", StringComparison.Ordinal));
    }

    [Fact]
    public void Humidity_just_above_100_is_cut_and_far_above_is_refused()
    {
        var weather = Good(EpwText.Year((hour, fields) => fields[8] = hour switch { 50 => "101", 72 => "250", _ => fields[8] }));
        Assert.Equal(1, weather.Hours[50].RelativeHumidity);
        Assert.Equal(0.71, weather.Hours[72].RelativeHumidity, 0.01);
        Assert.Contains(weather.Notes, note => note.StartsWith("Relative humidity of 100 to 110 % taken as 100 %, once", StringComparison.Ordinal));
    }

    [Fact]
    public void Rain_gathered_over_hours_is_shared_by_them()
    {
        var weather = Good(EpwText.Year((hour, fields) =>
        {
            if (hour is >= 300 and < 305) fields[33] = "999";
            if (hour == 305) (fields[33], fields[34]) = ("12.0", "6");
        }));
        for (var hour = 300; hour <= 305; hour++) Assert.Equal(2, weather.Hours[hour].Rain, 1e-9);
        Assert.Empty(weather.Notes);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("99")]
    [InlineData("1.0")]
    public void Rain_hours_of_zero_or_missing_stand_for_one(string hours) =>
        Assert.Equal(0.1, Good(EpwText.Year((_, fields) => fields[34] = hours)).Hours[7].Rain, 1e-9);

    [Fact]
    public void Rain_zero_all_year_is_drawn_from_the_nearest_place()
    {
        var weather = Good(EpwText.Year((_, fields) => fields[33] = "0.0"));
        Assert.InRange(weather.Hours.Sum(hour => hour.Rain), 500, 1500);
        Assert.Contains(weather.Notes, note => note.Contains("Des Moines, Iowa", StringComparison.Ordinal) && note.Contains("zero in all 8760 hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Old_file_of_33_fields_has_no_rain_but_is_read()
    {
        var text = EpwText.Header + string.Join('\n', EpwText.Year()[EpwText.Header.Length..].Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => string.Join(',', line.Split(',')[..33])));
        Assert.Contains(Good(text).Notes, note => note.Contains("Rain is missing in 8760 of 8760 hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Exponents_blanks_and_carriage_returns_are_read()
    {
        var text = EpwText.Year((_, fields) => fields[6] = " 1.05E+01 ").Replace("41.50", "4.15000E+01", StringComparison.Ordinal).Replace("\n", "\r\n", StringComparison.Ordinal);
        var weather = Good(text + "\r\n\r\n");
        Assert.Equal(10.5, weather.Hours[0].Celsius);
        Assert.Equal(41.5, weather.Latitude);
    }

    [Fact]
    public void Latin1_bytes_are_decoded()
    {
        var bytes = Encoding.Latin1.GetBytes(EpwText.Year().Replace("Anyplace", "Münster", StringComparison.Ordinal));
        Assert.StartsWith("Münster", Good(WeatherText.Decode(bytes).Value!).Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Real_leap_year_keeps_its_29_February()
    {
        var weather = Good(EpwText.Year(hours: 8784, year: 2016));
        Assert.False(weather.Typical);
        Assert.Equal(8784, weather.Hours.Count);
        Assert.Equal(new LocalDateTime(2016, 1, 1, 0, 0), weather.Start);
    }

    [Fact]
    public void Real_leap_year_without_its_29_February_gets_one_from_its_neighbours()
    {
        var lines = EpwText.Year(hours: 8784, year: 2016, header: EpwText.Header.Replace("TMY3", "AMY", StringComparison.Ordinal)).Split('\n').Where(line => !line.StartsWith("2016,2,29,", StringComparison.Ordinal));
        var weather = Good(string.Join('\n', lines));
        Assert.Equal(8784, weather.Hours.Count);
        Assert.Contains(weather.Notes, note => note.StartsWith("Temperature missing in 24 of 8784 hours", StringComparison.Ordinal));
    }

    [Fact]
    public void Leap_day_of_a_typical_year_is_left_out()
    {
        var weather = Good(EpwText.Year((_, fields) => fields[0] = fields[1] == "2" ? "1996" : "1997", hours: 8784, year: 2016));
        Assert.Equal(8760, weather.Hours.Count);
        Assert.Contains(weather.Notes, note => note.StartsWith("29 February", StringComparison.Ordinal));
    }

    [Fact]
    public void One_calendar_year_without_a_word_is_taken_as_typical_and_said()
    {
        var weather = Good(EpwText.Year(year: 2005));
        Assert.True(weather.Typical);
        Assert.Contains(weather.Notes, note => note.Contains("taken as a typical year", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(34, "It has 34 fields; every hour of an EPW file has 35.")]
    [InlineData(36, "It has 36 fields")]
    [InlineData(17, "It has 17 fields")]
    public void Wrong_number_of_fields_is_refused_with_its_line(int count, string message)
    {
        var lines = EpwText.Year().Split('\n');
        lines[4711] = string.Join(',', lines[4711].Split(',').Concat(["1"]).Take(count));
        var problem = Assert.Single(Bad(string.Join('\n', lines)));
        Assert.Equal("test.epw, line 4712", problem.Field);
        Assert.StartsWith(message, problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_bad_line_is_listed_and_the_rest_are_counted()
    {
        var lines = EpwText.Year().Split('\n');
        for (var line = 100; line < 130; line++) lines[line] = "1,2,3";
        var problems = Bad(string.Join('\n', lines));
        Assert.Equal(11, problems.Count);
        Assert.StartsWith("20 more lines", problems[^1].WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Truncated_file_is_refused_with_the_line_cut_and_where_the_hours_end()
    {
        var text = EpwText.Year();
        Assert.Contains(Bad(text[..(text.Length / 2)]), problem => problem.WhatToDo.Contains("cut short", StringComparison.Ordinal));
        var whole = string.Join('\n', text.Split('\n').Take(5000));
        Assert.Contains(Bad(whole), problem => problem.WhatIsWrong.Contains("The temperature is missing in 3768 of 8760 hours", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1, "13")]
    [InlineData(2, "32")]
    [InlineData(3, "25")]
    [InlineData(3, "0")]
    [InlineData(4, "30")]
    [InlineData(6, "warm")]
    [InlineData(33, "wet")]
    public void Field_that_cannot_be_is_refused_with_its_line(int field, string value)
    {
        var problem = Assert.Single(Bad(EpwText.Year((hour, fields) => fields[field] = hour == 10 ? value : fields[field])));
        Assert.Equal("test.epw, line 19", problem.Field);
        Assert.Contains(value, problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "test.epw", "empty")]
    [InlineData("   \r\n", "test.epw", "empty")]
    [InlineData("LOCATION,x\n", "test.epw", "no hours")]
    [InlineData("nonsense\nmore", "test.epw", "No header line")]
    public void File_that_is_none_is_refused(string text, string field, string message)
    {
        var problem = Assert.Single(WeatherReader.Read("test.epw", text).Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(message, problem.WhatIsWrong, StringComparison.Ordinal);
        Assert.NotEmpty(problem.WhatToDo);
    }

    [Fact]
    public void Header_without_hours_is_refused() =>
        Assert.Contains("no hours", Assert.Single(Bad(EpwText.Header + "\n\n")).WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Several_records_an_hour_are_refused() =>
        Assert.Contains("4 records per hour", Assert.Single(Bad(EpwText.Year(header: EpwText.Header.Replace("DATA PERIODS,1,1", "DATA PERIODS,1,4", StringComparison.Ordinal)))).WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Long_gap_is_refused_with_its_start()
    {
        var problem = Assert.Single(Bad(EpwText.Year((hour, fields) => fields[6] = hour is >= 1000 and < 1080 ? "99.9" : fields[6])));
        Assert.Contains("missing for 80 hours from 11 February", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Broken_gzip_is_refused() =>
        Assert.Contains("cannot be unpacked", Assert.Single(WeatherText.Decode([0x1F, 0x8B, 1, 2, 3], "a.gz").Problems).WhatIsWrong, StringComparison.Ordinal);

    private static HourlyWeather Good(string text)
    {
        var result = WeatherReader.Read("test.epw", text);
        Assert.True(result.TryGet(out var weather), string.Join("\n", result.Problems));
        return weather;
    }

    private static IReadOnlyList<Problem> Bad(string text) => WeatherReader.Read("test.epw", text).Problems;
}
