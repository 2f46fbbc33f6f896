using NodaTime;
using Rickyard.Store;
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
        Assert.Equal(72, weather.Course(1, Start, 72).Value!.Hours.Count);
        Assert.Equal(weather.Course(1, Start, 72).Value!.Hours, weather.Course(1, Start, 72).Value!.Hours);
        Assert.NotEqual(weather.Course(1, Start, 72).Value!.Hours, weather.Course(2, Start, 72).Value!.Hours);
    }

    [Fact]
    public void File_is_found_from_the_folder_of_the_case()
    {
        _folder.Write("station.csv", Hours(48));
        var weather = new WeatherSource(_folder.Path).Read(new("station.csv", null));
        Assert.True(weather.TryGet(out var found), string.Join('\n', weather.Problems));
        Assert.Equal(24, found.Course(1, Start, 24).Value!.Hours.Count);
    }

    [Fact]
    public void File_that_does_not_cover_the_run_is_a_problem()
    {
        _folder.Write("station.csv", Hours(48));
        Assert.Contains("covers", Assert.Single(new WeatherSource(_folder.Path).Read(new("station.csv", null)).Value!.Course(1, Start, 480).Problems).WhatIsWrong, StringComparison.Ordinal);
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

    private static string Hours(int count) => "time,temperature_c,humidity_pct,wind_m_s,rain_mm\n" + string.Concat(Enumerable.Range(0, count)
        .Select(hour => FormattableString.Invariant($"{Start.PlusHours(hour):uuuu-MM-dd HH:mm},10,60,2,0\n")));
}
