using System.Text.RegularExpressions;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Tests.Commands;

/// <summary>The guide to the hot box shows only commands that are understood, on cases that are there.</summary>
public sealed partial class HotBoxGuideTests : IDisposable
{
    private static readonly string Guide = File.ReadAllText(RepositoryFolder.Of("docs", "hot-box.md"));

    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Commands => [.. CommandLine().Matches(Guide).Select(match => match.Groups["typed"].Value)];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void Command_of_the_guide_is_understood(string typed)
    {
        var spoken = Typed.Run([.. Word().Matches(typed).Select(word => Placed(word.Value.Trim('"')))]);
        Assert.Equal((0, ""), (spoken.Code, spoken.Error));
    }

    [Fact]
    public void Guide_shows_both_commands() => Assert.All(["dry", "charge"], name => Assert.Contains(Commands, row => row.Data.StartsWith(name, StringComparison.Ordinal)));

    private string Placed(string word) => word.StartsWith("examples/", StringComparison.Ordinal)
        ? RepositoryFolder.Of(word.Split('/'))
        : word.EndsWith(".svg", StringComparison.Ordinal) || word.EndsWith(".csv", StringComparison.Ordinal) ? _folder.Of(word) : word;

    [GeneratedRegex(@"^\./rickyard (?<typed>.+)$", RegexOptions.Multiline)]
    private static partial Regex CommandLine();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();
}
