using System.Text.Json;
using Rickyard.Commands;
using Rickyard.Core.Planning;
using Rickyard.Screens;
using Rickyard.SplitSize;
using Rickyard.Testing;
using Rickyard.Testing.Cases;
using Rickyard.Tests.Commands;
using Xunit;

namespace Rickyard.Tests.SplitSize;

public sealed class SplitSizeCommandTests : IDisposable
{
    private const string Outdoors = """{ "normals": { "place": "Des Moines, Iowa" } }""";

    private readonly TemporaryFolder _folder = new();
    private readonly InventedSizeEngine _engine = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void First_sentence_is_the_answer()
    {
        var spoken = Run(Sample(), "--by", "2024-07-10");
        Assert.Equal(0, spoken.Code);
        Assert.StartsWith("Split no wider than 8.5 cm (3¼ in) across to have 9 in 10 cores at or below 20 % dry basis by 10 July", Plain(spoken.Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Story_tells_sizes_assumptions_and_limits()
    {
        var story = Plain(Run(Sample(), "--in", "100 days").Output);
        foreach (var part in new[] { "Splits as wide as the case has them, about 15 cm", "widest", "Assumed:", "the spread of sizes in the lot is left out", "Limits:", "narrower and wider ones were not tried", "A forecast, not a promise", "seed 1" })
            Assert.Contains(part, story, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_that_no_size_fits_says_so_and_when_the_smallest_is()
    {
        var story = Plain(Run(Sample(), "--in", "14 days").Output);
        Assert.StartsWith("No split from 3 cm (1 in) up has 9 in 10 cores at or below 20 % dry basis by 15 April 2024", story, StringComparison.Ordinal);
        Assert.Contains("9 in 10 of them are by 16 April 2024", story, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_that_every_size_fits_says_how_far_was_tried() =>
        Assert.StartsWith("Any split up to 30 cm (11¾ in) across, the widest tried, has at least 9 in 10 cores", Plain(Run(Sample(), "--in", "5 years").Output), StringComparison.Ordinal);

    [Theory]
    [InlineData("--by", "2024-05-01", 30)]
    [InlineData("--in", "5 months", 153)]
    [InlineData("--in", "1 month", 30)]
    [InlineData("--in", "2 weeks", 14)]
    [InlineData("--in", "36 h", 1.5)]
    public void Time_is_read_as_people_say_it(string option, string text, double days)
    {
        Run(Sample(), option, text, "--band", "16-18 %", "--confidence", "95 %", "--members", "64", "--seed", "7");
        Assert.Equal(new SizeRequest(days, 0.18, 0.95, 64, 7), _engine.Asked);
    }

    [Theory]
    [InlineData("Nothing says when")]
    [InlineData("is not a day of the calendar", "--by", "1 May")]
    [InlineData("It is too soon", "--by", "2024-03-01")]
    [InlineData("has no unit", "--in", "5")]
    [InlineData("Both --by and --in", "--by", "2024-07-01", "--in", "5 months")]
    [InlineData("50 to 99 %", "--by", "2024-07-01", "--confidence", "100 %")]
    [InlineData("50 to 99 %", "--by", "2024-07-01", "--confidence", "40 %")]
    [InlineData("is not a band", "--by", "2024-07-01", "--band", "20")]
    [InlineData("multiple of four", "--by", "2024-07-01", "--members", "33")]
    [InlineData("0 or more", "--by", "2024-07-01", "--seed", "-1")]
    [InlineData("neither SVG nor PNG", "--chart", "sizes.gif")]
    public void Wrong_question_is_refused_with_its_cure(string words, params string[] options)
    {
        var spoken = Run([Sample(), .. options]);
        Assert.Equal((2, ""), (spoken.Code, spoken.Output));
        Assert.Contains(words, Plain(spoken.Error), StringComparison.Ordinal);
    }

    [Fact]
    public void Problem_of_the_search_is_told_by_its_option() => Assert.Contains("  --by\n", Run(Sample(), "--by", "2024-03-01").Error, StringComparison.Ordinal);

    [Fact]
    public void Day_without_a_start_day_is_refused_with_its_cure()
    {
        var path = _folder.Write("case.json", SampleCase.With("start.at", null));
        Assert.Contains("Give \"at\" in its \"start\"", Plain(Run(path, "--by", "2024-07-01").Error), StringComparison.Ordinal);
        Assert.Contains("by day 30", Plain(Run(path, "--in", "30 days").Output), StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_answer_sizes_and_chart()
    {
        var root = JsonDocument.Parse(Run(Rack(), "--in", "100 days", "--chart", _folder.Of("a.svg"), "--json").Output).RootElement;
        var answer = root.GetProperty("answer");
        Assert.Equal((8.5, 3.35, 100), (answer.GetProperty("width_cm").GetDouble(), answer.GetProperty("width_in").GetDouble(), answer.GetProperty("needed_day").GetDouble()));
        Assert.Equal("2024-07-10", answer.GetProperty("needed_date").GetString());
        Assert.False(answer.GetProperty("none_ready").GetBoolean() || answer.GetProperty("largest_ready").GetBoolean());
        Assert.All(answer.GetProperty("sizes").EnumerateArray(), size => Assert.InRange(size.GetProperty("chance_ready").GetDouble(), 0, 1));
        Assert.True(answer.GetProperty("on_the_day").TryGetProperty("core_pct_dry", out _));
        var chart = root.GetProperty("chart");
        Assert.Equal((12, 6, 12), (chart.GetProperty("stacked").GetArrayLength(), chart.GetProperty("months_until_needed").GetArrayLength(), chart.GetProperty("width_cm").GetArrayLength()));
        Assert.All(chart.GetProperty("width_cm").EnumerateArray(), row => Assert.Equal(6, row.GetArrayLength()));
        Assert.True(root.TryGetProperty("inputs", out _));
    }

    [Fact]
    public void Json_of_no_size_holds_null()
    {
        var answer = JsonDocument.Parse(Run(Sample(), "--in", "5 days", "--json").Output).RootElement.GetProperty("answer");
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("width_cm").ValueKind);
        Assert.True(answer.GetProperty("none_ready").GetBoolean());
    }

    [Theory]
    [InlineData("a.svg", "<svg")]
    [InlineData("a.png", "PNG")]
    public void Chart_alone_is_drawn_and_told_as_a_table(string name, string beginning)
    {
        var spoken = Run(Rack(), "--chart", _folder.Of(name), "--confidence", "75 %");
        Assert.Equal(0, spoken.Code);
        Assert.Null(_engine.Asked);
        Assert.Equal(0.75, _engine.Charted!.Confidence);
        Assert.Contains(beginning, File.ReadAllText(_folder.Of(name))[..20], StringComparison.Ordinal);
        Assert.Contains("1 December", spoken.Output, StringComparison.Ordinal);
    }

    /// <summary>The command lines of the guide are understood; its first case file is the example that comes with the program.</summary>
    [Fact]
    public void Command_lines_of_the_guide_are_understood()
    {
        var lines = File.ReadAllLines(RepositoryFolder.Of("docs", "split-size.md")).Where(line => line.StartsWith("rickyard split-size ", StringComparison.Ordinal)).ToArray();
        Assert.True(lines.Length >= 3);
        foreach (var line in lines)
        {
            var words = line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Skip(2);
            var spoken = Run([.. words.Select(word => word.StartsWith("examples/", StringComparison.Ordinal) ? RepositoryFolder.Of(word.Split('/')) : word.EndsWith(".svg", StringComparison.Ordinal) ? _folder.Of(word) : word)]);
            Assert.True(spoken.Code == 0, $"{line}: {spoken.Error}");
        }
    }

    private Spoken Run(params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        var screen = new Screen(output, error, 100);
        var code = CommandLine.Run(["split-size", .. arguments], screen, [SplitSizeCommand.Build(screen, _engine)]);
        return new(code, output.ToString(), error.ToString());
    }

    private string Sample() => _folder.Write("case.json", SampleCase.Text);

    private string Rack() => _folder.Write("case.json", SampleCase.With("air", Outdoors));

    private static string Plain(string text) => string.Join(' ', text.Replace('\u00a0', ' ').Split((char[])['\n', ' '], StringSplitOptions.RemoveEmptyEntries));
}
