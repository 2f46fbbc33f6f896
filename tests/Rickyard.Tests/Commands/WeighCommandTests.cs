using System.Text.Json;
using Rickyard.Testing;
using Rickyard.Testing.Approval;
using Xunit;

namespace Rickyard.Tests.Commands;

public sealed class WeighCommandTests
{
    [Theory]
    [InlineData("help-weigh", "--help")]
    [InlineData("weigh-assumed", "--start-mass", "3.20 kg", "--start-moisture", "72 % dry basis", "--mass", "2.50 kg", "--target", "20 % dry basis")]
    [InlineData("weigh-sections", "--section", "98.55 g > 59.20 g", "--section", "92.1 g > 56.0 g", "--start-mass", "5 lb 3 oz", "--mass", "4 lb 12 oz", "--mass", "4 lb 1 oz", "--target", "20 % wet basis")]
    [InlineData("weigh-section-alone", "--section", "136 g > 100 g")]
    [InlineData("weigh-pull-now", "--start-mass", "14.8 lb", "--start-moisture", "80 % dry basis", "--mass", "9.2 lb", "--target", "18 % dry basis")]
    [InlineData("weigh-oven-unready", "--oven", "0 h: 136 g; 12 h: 101.2 g; 16 h: 100.1 g", "--method", "ASTM D4442 B")]
    [InlineData("weigh-oven-constant", "--oven", "0 h: 136 g; 12 h: 101.2 g; 20 h: 100.1 g; 24 h: 100.1 g; 28 h: 100 g")]
    [InlineData("weigh-microwave", "--microwave", "0 min: 52.1 g; 20 min: 45 g; 21 min: 44.6 g; 22 min: 44.4 g")]
    [InlineData("weigh-oven-wet-basis", "--oven", "0 h: 500 g; 15 h: 357.1 g; 16 h: 357.1 g", "--method", "iso 18134 1")]
    [InlineData("weigh-probe", "--probe", "18, 21, 25, 19, 22")]
    [InlineData("weigh-probe-enough", "--probe", "18 19 18.5 19% 18")]
    [InlineData("weigh-json", "--start-mass", "3.20 kg", "--section", "98.55 g > 59.20 g", "--mass", "2.50 kg", "--target", "20 % dry basis", "--json")]
    [InlineData("weigh-wrong-all", "--mass", "5 kg", "--mass", "4", "--target", "20 %", "--section", "59 g > 98 g", "--section", "3 g", "--probe", "x 5", "--method", "sun")]
    [InlineData("weigh-wrong-masses", "--start-mass", "10 kg", "--start-moisture", "60 % dry basis", "--mass", "8 kg", "--mass", "9.5 kg", "--mass", "6 kg", "--target", "70 % dry basis")]
    [InlineData("weigh-wrong-oven", "--oven", "0 h: 136 g; 12 h 101 g; 16: 99 g", "--method", "ASTM D442 B")]
    [InlineData("weigh-wrong-times", "--microwave", "0 min: 50 g; 20 min: 40 g; 19 min: 39 g; 24 min: 45 g")]
    public void Answer_is_the_approved_one(string name, params string[] arguments) => Approved.Check("Rickyard.Tests", name, Typed.Run(["weigh", .. arguments]).Whole);

    // Firewood forum thread 7355 (text, user data): 14.8 lb at an assumed 80 %, 9.2 lb now: 8.222 lb of wood, 11.9 %.
    [Fact]
    public void Tracked_split_of_the_forum_comes_out()
    {
        var answer = Json("--start-mass", "14.8 lb", "--start-moisture", "80 % dry basis", "--mass", "9.2 lb");
        Assert.Equal(11.9, answer.GetProperty("moisture_pct_dry").GetDouble(), 0.05);
        Assert.Equal(8.222 * 0.45359237, answer.GetProperty("oven_dry_kg").GetDouble(), 0.0005);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("target_mass_kg").ValueKind);
    }

    // Small-kiln owner manual (text): 47.06 % and 43.75 %, mean 45.4 %.
    [Fact]
    public void Sections_of_the_kiln_manual_come_out() =>
        Assert.Equal(45.4, Json("--section", "2.5 g > 1.7 g", "--section", "2.3 g > 1.6 g").GetProperty("moisture_pct_dry").GetDouble(), 0.01);

    [Theory]
    [InlineData("136 g", "2.4 lb")]
    [InlineData("0.136 kg", "38.4 oz")]
    public void Units_do_not_matter(string wet, string mass)
    {
        var answer = Json("--section", $"{wet} > 100 g", "--start-mass", mass, "--mass", mass);
        Assert.Equal(36, answer.GetProperty("moisture_pct_dry").GetDouble(), 0.001);
    }

    [Theory]
    [InlineData("28 h: 100 g", true)]
    [InlineData("26 h: 100 g", false)]
    public void Constant_only_over_a_whole_interval(string last, bool constant)
    {
        var answer = Json("--oven", $"0 h: 136 g; 24 h: 100.1 g; {last}");
        Assert.Equal(constant, answer.GetProperty("is_constant").GetBoolean());
        Assert.Equal(4, answer.GetProperty("cautions").GetArrayLength());
        Assert.Equal(constant ? JsonValueKind.Number : JsonValueKind.Null, answer.GetProperty("oven_dry_kg").ValueKind);
    }

    [Fact]
    public void Finer_balance_narrows_the_answer()
    {
        double Width(string step)
        {
            var answer = Json("--oven", "0 h: 136 g; 24 h: 100 g; 28 h: 100 g", "--balance", step);
            return answer.GetProperty("high_pct_dry").GetDouble() - answer.GetProperty("low_pct_dry").GetDouble();
        }

        Assert.True(Width("0.01 g") < Width("0.1 g") && Width("0.1 g") < Width("1 g"));
    }

    [Theory]
    [InlineData]
    [InlineData("--start-mass", "3 kg")]
    [InlineData("--start-mass", "3 kg", "--start-moisture", "70 % dry basis", "--section", "136 g > 100 g")]
    [InlineData("--probe", "18")]
    [InlineData("--probe", "")]
    [InlineData("--oven", "")]
    [InlineData("--oven", "0 h: 136 g", "--microwave", "0 min: 50 g")]
    [InlineData("--microwave", "0 min: 50 g", "--method", "EN 13183-1")]
    [InlineData("--probe", "18 19", "--balance", "1 g")]
    public void Wrong_question_says_why_and_exits_with_two(params string[] arguments)
    {
        var spoken = Typed.Run(["weigh", .. arguments]);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains("problem", spoken.Error, StringComparison.Ordinal);
    }

    // docs/weighing.md quotes these answers.
    [Theory]
    [InlineData("--start-mass", "3.20 kg", "--start-moisture", "72 % dry basis", "--mass", "2.50 kg", "--target", "20 % dry basis")]
    [InlineData("--oven", "0 h: 136 g; 12 h: 101.2 g; 16 h: 100.1 g", "--method", "ASTM D4442 B")]
    [InlineData("--probe", "18, 21, 25, 19, 22")]
    public void Guide_quotes_what_the_command_says(params string[] arguments)
    {
        var guide = File.ReadAllText(RepositoryFolder.Of("docs", "weighing.md"));
        Assert.Contains(string.Join(' ', arguments.Select(argument => argument[0] == '-' ? argument : $"\"{argument}\"")), guide, StringComparison.Ordinal);
        Assert.Contains($"> {Json(arguments).GetProperty("next").GetString()}", guide, StringComparison.Ordinal);
    }

    [Fact]
    public void Hopelessly_coarse_balance_is_told_and_gives_no_upper_limit()
    {
        var answer = Json("--oven", "0 h: 136 g; 24 h: 100 g; 28 h: 100 g", "--balance", "200 g");
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("high_pct_dry").ValueKind);
        Assert.Contains("too coarse", string.Join(' ', answer.GetProperty("notes").EnumerateArray()), StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] arguments)
    {
        var spoken = Typed.Run(["weigh", .. arguments, "--json"]);
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
        return JsonDocument.Parse(spoken.Output).RootElement;
    }
}
