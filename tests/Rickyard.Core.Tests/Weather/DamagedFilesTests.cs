using CsCheck;
using Rickyard.Core.Weather;
using Xunit;

namespace Rickyard.Core.Tests.Weather;

/// <summary>Files damaged at random are read or refused with reasons; they never bring the program down.</summary>
public class DamagedFilesTests
{
    private static readonly WeatherSite Site = new(Latitude: 41.5, Longitude: -93.6);

    public static TheoryData<string> Texts => new(
        string.Join('\n', EpwText.Year().Split('\n').Take(200)),
        "time,temperature (°C),humidity (%),wind speed (km/h),rain (mm)\n" + string.Concat(Enumerable.Range(0, 60).Select(hour => $"2024-04-{15 + hour / 24} {hour % 24:00}:00,10.5,80,7.2,0.2\n")),
        string.Concat(Enumerable.Range(0, 40).Select(hour => $"2016 01 0{1 + hour / 24} {hour % 24:00}   -44   -83 10256   260    67     4     0 -9999\n")),
        "\"STATION\",\"DATE\",\"PRCP\",\"TMAX\",\"TMIN\"\n" + string.Concat(Enumerable.Range(1, 28).Select(day => $"\"X\",\"2018-02-{day:00}\",\"0.10\",\"65\",\"34\"\n")));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Damaged_text_is_read_or_refused_with_reasons(string text)
    {
        Assert.Equal(text[0] != 'L', WeatherReader.Read("x", text, Site).Value is not null); // only the EPW file is too short
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 40], Gen.String[Gen.Char["0123456789-.,;:/ T\"\n\té"], 0, 12]).Array[1, 4].Sample(
            damages =>
            {
                var result = WeatherReader.Read("x", damages.Aggregate(text, Damage), Site);
                return result.Value is not null || result.Problems.All(problem => problem.WhatIsWrong.Length > 0 && problem.WhatToDo.Length > 0);
            },
            iter: 300);
    }

    private static string Damage(string text, (int At, int Length, string Put) damage)
    {
        var at = Math.Min(damage.At, text.Length);
        return text.Remove(at, Math.Min(damage.Length, text.Length - at)).Insert(at, damage.Put);
    }
}
