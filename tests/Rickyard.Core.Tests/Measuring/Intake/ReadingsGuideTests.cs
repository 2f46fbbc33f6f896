using System.Text.RegularExpressions;
using Rickyard.Core.Measuring.Intake;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Measuring.Intake;

/// <summary>The guide to a table of readings shows only what is read, and the table among the examples reads too.</summary>
public sealed partial class ReadingsGuideTests
{
    private static readonly string Guide = File.ReadAllText(RepositoryFolder.Of("docs", "readings.md"));

    [Fact]
    public void Table_of_the_guide_is_kept_whole()
    {
        var log = OakIntake.Read(Fence().Match(Guide).Groups["text"].Value).Value!;
        Assert.Equal((7, 0, 0), (log.Kept.Count, log.LeftOut.Count, log.Notes.Count));
    }

    [Fact]
    public void Table_among_the_examples_is_kept_whole()
    {
        var log = OakIntake.Read(File.ReadAllText(RepositoryFolder.Of("examples", "oak-readings.csv"))).Value!;
        Assert.Equal((10, 0, 0), (log.Kept.Count, log.LeftOut.Count, log.Notes.Count));
    }

    [Fact]
    public void Guide_explains_every_column() => Assert.All(ReadingColumns.All, column => Assert.Contains($"`{column}`", Guide, StringComparison.Ordinal));

    [GeneratedRegex(@"```csv\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Fence();
}
