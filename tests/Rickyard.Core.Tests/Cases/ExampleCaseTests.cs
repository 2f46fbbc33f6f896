using Rickyard.Core.Cases;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Core.Tests.Cases;

public sealed class ExampleCaseTests
{
    public static TheoryData<string> Files => [.. Directory.GetFiles(RepositoryFolder.Of("examples"), "*.json").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Example_is_read_without_a_problem_and_says_that_it_is_invented(string file)
    {
        var read = CaseReader.Read(File.ReadAllText(RepositoryFolder.Of("examples", file)), file);
        Assert.Empty(read.Problems);
        Assert.Contains("(invented)", read.Value!.Name, StringComparison.Ordinal);
    }
}
