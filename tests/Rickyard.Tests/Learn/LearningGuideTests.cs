using System.Text.RegularExpressions;
using Rickyard.Commands;
using Rickyard.Learn;
using Rickyard.Screens;
using Rickyard.Testing;
using Rickyard.Testing.Cases;
using Rickyard.Tests.Commands;
using Xunit;

namespace Rickyard.Tests.Learn;

/// <summary>The guide to learning shows only commands that are understood, a table that is there, and sentences that are said.</summary>
public sealed partial class LearningGuideTests : IDisposable
{
    private static readonly string Guide = File.ReadAllText(RepositoryFolder.Of("docs", "learning.md")).ReplaceLineEndings("\n");

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Commands => [.. CommandShown().Matches(Guide).Select(match => match.Groups["typed"].Value)];

    public static TheoryData<string> Sayings => [.. Quote().Matches(Guide).Select(match => match.Groups["said"].Value)];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void Command_of_the_guide_is_understood(string typed)
    {
        var spoken = TypedLearn.Run(Words(typed));
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
    }

    [Fact(Skip = "Waits for the reading of tables of readings, which is not wired yet.")]
    public void First_command_of_the_guide_is_answered_by_the_real_engine()
    {
        using StringWriter output = new(), error = new();
        var screen = new Screen(output, error, 100);
        var command = LearnCommand.Build(screen, new LearningEngine(TimeProvider.System), new ObservationSource(), new MeterBand(), new WebLearningPicture());
        Assert.Equal(0, CommandLine.Run(["learn", .. Words(CommandShown().Match(Guide).Groups["typed"].Value), "--members", "64"], screen, [command]));
        Assert.Contains("before the 10 readings", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("Can hardly be right:", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sayings))]
    public void Sentence_of_the_guide_is_said(string said)
    {
        var story = TypedLearn.Run(_folder.Write("case.json", SampleCase.Text), "readings.csv").Output;
        Assert.Contains(said, Space().Replace(story, " "), StringComparison.Ordinal);
    }

    [Fact]
    public void Table_of_the_guide_is_the_one_among_the_examples() =>
        Assert.Equal(File.ReadAllText(RepositoryFolder.Of("examples", "oak-readings.csv")).ReplaceLineEndings("\n"), Table().Match(Guide).Groups["text"].Value);

    [Fact]
    public void Guide_names_every_option()
    {
        var options = new LearnOptions();
        System.CommandLine.Option[] all = [options.Json, options.Csv, options.Picture, options.Members, options.Seed, options.Band, options.Scale, options.Today];
        Assert.All(all, option => Assert.Contains($"`{option.Name}`", Guide, StringComparison.Ordinal));
    }

    private string[] Words(string typed) => [.. Word().Matches(typed).Select(word => Placed(word.Value.Trim('"')))];

    private string Placed(string word) => word switch
    {
        _ when word.StartsWith("examples/", StringComparison.Ordinal) => RepositoryFolder.Of(word.Split('/')),
        "oak.svg" or "oak.csv" => _folder.Of(word),
        _ => word,
    };

    [GeneratedRegex(@"^rickyard learn (?<typed>.+)$", RegexOptions.Multiline)]
    private static partial Regex CommandShown();

    [GeneratedRegex(@"^> (?<said>.+)$", RegexOptions.Multiline)]
    private static partial Regex Quote();

    [GeneratedRegex(@"```csv\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Table();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\s+(?:- )?")]
    private static partial Regex Space();
}
