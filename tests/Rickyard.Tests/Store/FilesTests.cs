using Rickyard.Store;
using Xunit;

namespace Rickyard.Tests.Store;

public sealed class FilesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Written_file_is_whole_and_alone()
    {
        Assert.Null(OutputFiles.Write(_folder.Of("a.csv"), "--csv", "new"u8.ToArray()));
        Assert.Null(OutputFiles.Write(_folder.Of("a.csv"), "--csv", "newer"u8.ToArray()));
        Assert.Equal("newer", File.ReadAllText(_folder.Of("a.csv")));
        Assert.Equal(["a.csv"], _folder.Names);
    }

    [Theory]
    [InlineData("none/a.csv", "folder does not exist")]
    [InlineData("taken", "is a folder")]
    [InlineData("file.txt/a.csv", "cannot be written")]
    public void Target_that_cannot_be_written_is_a_problem_and_leaves_nothing(string name, string why)
    {
        Directory.CreateDirectory(_folder.Of("taken"));
        _folder.Write("file.txt", "old");
        foreach (var problem in new[] { OutputFiles.Check(_folder.Of(name), "--csv"), OutputFiles.Write(_folder.Of(name), "--csv", [1]) })
        {
            Assert.Equal("--csv", problem!.Field);
            Assert.Contains(why, problem.WhatIsWrong, StringComparison.Ordinal);
        }

        Assert.Equal(["file.txt", "taken"], _folder.Names);
        Assert.Equal("old", File.ReadAllText(_folder.Of("file.txt")));
    }

    [Fact]
    public void Empty_target_is_a_problem() => Assert.Contains("empty", OutputFiles.Check(" ", "--csv")!.WhatIsWrong, StringComparison.Ordinal);

    [Fact]
    public void Check_leaves_the_old_file_and_nothing_else()
    {
        _folder.Write("a.csv", "old");
        Assert.Null(OutputFiles.Check(_folder.Of("a.csv"), "--csv"));
        Assert.Equal(["a.csv"], _folder.Names);
        Assert.Equal("old", File.ReadAllText(_folder.Of("a.csv")));
    }

    [Fact]
    public void Missing_file_and_folder_are_told_with_their_path()
    {
        Assert.Contains("no such file", Assert.Single(InputFiles.ReadBytes(_folder.Of("none.epw")).Problems).WhatIsWrong, StringComparison.Ordinal);
        var problem = Assert.Single(InputFiles.ReadBytes(_folder.Path).Problems);
        Assert.Equal(_folder.Path, problem.Field);
        Assert.Contains("folder", problem.WhatIsWrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Path_no_file_system_allows_is_told() => Assert.NotEmpty(InputFiles.ReadBytes("a\0b").Problems);

    [Fact]
    public void File_larger_than_the_cap_is_refused()
    {
        using (var file = File.Create(_folder.Of("large"))) file.SetLength(InputFiles.LargestBytes + 1);
        Assert.Contains("larger than 64 MB", Assert.Single(InputFiles.ReadBytes(_folder.Of("large")).Problems).WhatIsWrong, StringComparison.Ordinal);
    }
}
