using System.Text.RegularExpressions;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Tests.Commands;

/// <summary>The guide to the meter shows only commands that are answered and a sentence that is said.</summary>
public sealed partial class MeterGuideTests
{
    private static readonly string Guide = File.ReadAllText(RepositoryFolder.Of("docs", "meter.md")).ReplaceLineEndings("\n");

    public static TheoryData<string> Commands => [.. CommandLine().Matches(Guide).Select(match => match.Groups["typed"].Value)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Command_of_the_guide_is_answered(string typed)
    {
        var spoken = Typed.Run(Words(typed));
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
    }

    [Fact]
    public void Sentence_of_the_guide_is_said()
    {
        var said = Space().Replace(Typed.Run(Words(CommandLine().Match(Guide).Groups["typed"].Value)).Output, " ");
        Assert.Contains(Quote().Match(Guide).Groups["said"].Value, said, StringComparison.Ordinal);
    }

    private static string[] Words(string typed) => [.. Word().Matches(typed).Select(word => word.Value.Trim('"'))];

    [GeneratedRegex(@"^\./rickyard (?<typed>.+)$", RegexOptions.Multiline)]
    private static partial Regex CommandLine();

    [GeneratedRegex(@"^> (?<said>.+)$", RegexOptions.Multiline)]
    private static partial Regex Quote();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
