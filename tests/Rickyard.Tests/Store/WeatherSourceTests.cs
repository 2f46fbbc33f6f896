using NodaTime;
using Rickyard.Store;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Tests.Store;

public sealed class WeatherSourceTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private static LocalDateTime Start => new(2024, 2, 28, 0, 0);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Place_gives_another_course_for_every_seed_and_the_same_for_the_same()
    {
        var weather = new WeatherSource(_folder.Path).Read(new(null, "Des Moines, Iowa")).Value!;
        Assert.Equal(72, weather.Member(1, Start, 72).Hours.Count);
        Assert.Equal(weather.Member(1, Start, 72).Hours, weather.Member(1, Start, 72).Hours);
        Assert.NotEqual(weather.Member(1, Start, 72).Hours, weather.Member(2, Start, 72).Hours);
    }

    [Fact]
    public void File_is_found_from_the_folder_of_the_case_and_a_year_of_it_stands_for_the_rest()
    {
        _folder.Write("station.csv", Hours(366 * 24));
        var weather = new WeatherSource(_folder.Path).Read(new("station.csv", null));
        Assert.True(weather.TryGet(out var found), string.Join('\n', weather.Problems));
        Assert.Equal(24, found.Usual(Start, 24).Hours.Count);
        Assert.Equal(24, found.Usual(Start.PlusYears(5), 24).Hours.Count);
    }

    [Fact]
    public void Short_file_from_nowhere_is_a_problem()
    {
        _folder.Write("station.csv", Hours(48));
        Assert.NotEmpty(new WeatherSource(_folder.Path).Read(new("station.csv", null)).Problems);
    }

    [Theory]
    [InlineData("none.epw", null, "no such file")]
    [InlineData("empty.epw", null, "empty")]
    [InlineData(null, "Nowhereville", "No monthly normals")]
    public void Weather_that_cannot_be_had_is_a_problem(string? file, string? place, string why)
    {
        _folder.Write("empty.epw", "");
        Assert.Contains(why, new WeatherSource(_folder.Path).Read(new(file, place)).Problems[0].WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Weather_outside_a_box_is_read_from_the_folder_of_the_case_too()
    {
        _folder.Write("yard.csv", Hours(366 * 24));
        var drying = SampleCase.Read(SampleBoxCase.WithBox("ambient", """{ "weather": { "file": "yard.csv" } }"""));
        Assert.Equal(new("yard.csv", null), Assert.Single(new WeatherSource(_folder.Path).ReadAll(drying).Value!).Key);
        var lost = SampleCase.Read(SampleBoxCase.WithBox("ambient", """{ "weather": { "file": "none.csv" } }"""));
        Assert.Contains("no such file", Assert.Single(new WeatherSource(_folder.Path).ReadAll(lost).Problems).WhatIsWrong, StringComparison.Ordinal);
    }

    private static string Hours(int count) => "time,temperature_c,humidity_pct,wind_m_s,rain_mm\n" + string.Concat(Enumerable.Range(0, count)
        .Select(hour => FormattableString.Invariant($"{Start.PlusHours(hour):uuuu-MM-dd HH:mm},10,60,2,{(hour % 50 == 0 ? 2 : 0)}\n")));
}
