using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Tests.Commands;

public sealed partial class BoxQuestionTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Log_of_three_hot_cores_is_told_with_what_was_held_and_that_it_certifies_nothing()
    {
        var spoken = Typed.Run("heat-record", Log(core => core < 60 ? 20 : 62));
        var told = Space().Replace(spoken.Output, " ");
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
        Assert.StartsWith("The coldest core held 60 °C for 60 min, and 56 °C for 30 min.", told, StringComparison.Ordinal);
        Assert.Contains("only a certified facility may call wood certified", told, StringComparison.Ordinal);
        Assert.Contains("made as published practice asks", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Coarser_sensors_lose_the_hold_and_the_log_its_fitness()
    {
        var answer = JsonDocument.Parse(Typed.Run("heat-record", Log(_ => 61), "--accuracy", "2 °F", "--json").Output).RootElement;
        Assert.False(answer.GetProperty("schedules")[0].GetProperty("held").GetBoolean());
        Assert.False(answer.GetProperty("log").GetProperty("as_practice_asks").GetBoolean());
        Assert.False(answer.GetProperty("certified").GetBoolean());
    }

    [Fact]
    public void Log_of_the_guide_is_read()
    {
        var guide = File.ReadAllText(RepositoryFolder.Of("docs", "heat-treatment.md"));
        Assert.Equal(0, Typed.Run("heat-record", Write(Fence().Match(guide).Groups["text"].Value)).Code);
    }

    [Fact]
    public void Warmth_sets_vapour_and_time_side_by_side()
    {
        var answer = JsonDocument.Parse(Typed.Run("warmth", "--species", "post oak", "--width", "7 cm", "--from", "20 °C", "--to", "70 °C", "--json").Output).RootElement;
        Assert.Equal(13.3, answer.GetProperty("saturation_ratio").GetDouble(), 0.1);
        Assert.InRange(answer.GetProperty("core_time_ratio").GetDouble(), answer.GetProperty("kiln_law_time_ratio").GetDouble(), answer.GetProperty("vapor_difference_ratio").GetDouble());
    }

    [Fact]
    public void Warmth_tells_of_air_too_humid_to_get_there() =>
        Assert.Contains("never comes to 19 %", Space().Replace(Typed.Run("warmth", "--humidity", "95 %").Output, " "), StringComparison.Ordinal);

    [Theory]
    [InlineData("warmth", "--from", "70 °C", "--to", "20 °C")]
    [InlineData("warmth", "--width", "7", "--species", "nothern oka")]
    [InlineData("warmth", "--target", "60 % dry basis", "--species", "white ash")]
    [InlineData("heat-record", "no-such-file.csv")]
    public void Wrong_question_is_answered_with_its_problems(params string[] arguments)
    {
        var spoken = Typed.Run(arguments);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("problem", spoken.Error, StringComparison.Ordinal);
    }

    private string Log(Func<int, double> celsius)
    {
        var text = new StringBuilder("minutes,core 1 (°C),core 2 (°C),core 3 (°C),air (°C)\n");
        for (var minute = 0; minute <= 180; minute += 5) text.AppendLine(FormattableString.Invariant($"{minute},{celsius(minute)},{celsius(minute)},{celsius(minute)},70"));
        return Write(text.ToString());
    }

    private string Write(string text) => _folder.Write("cores.csv", text);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"```csv\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Fence();
}
