using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Xunit;

namespace Rickyard.Tests.Architecture;

public sealed partial class HouseRulesTests
{
    private const int LongestFile = 350;

    private static readonly Source[] All = [.. new[] { "src", "tests", "bench" }.SelectMany(folder => Sources.Of(folder))];

    public static TheoryData<string> Assemblies => ["Rickyard.Core", "Rickyard.Store", "Rickyard.Web", "rickyard"];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void Class_is_sealed_static_or_abstract(string assembly) => Assert.Empty(Assembly.Load(assembly).GetTypes()
        .Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false } && !type.IsDefined(typeof(CompilerGeneratedAttribute)) && type.Name != "Program")
        .Select(type => type.FullName));

    [Fact]
    public void Nothing_is_named_for_a_kind_of_class_instead_of_its_subject() => Assert.DoesNotContain(All.Select(source => source.Name), name => KindOfClass().IsMatch(name));

    [Fact]
    public void File_is_short_enough_to_be_one_idea() => Assert.All(
        All, source => Assert.True(source.Text.Count(letter => letter == '\n') <= LongestFile, source.Name));

    [Fact]
    public void File_holds_the_type_it_is_named_for() => Assert.Empty(All
        .Where(source => source.Name.StartsWith("src/", StringComparison.Ordinal) && Path.GetFileNameWithoutExtension(source.Name) is not "Program" and not "Period")
        .Where(source => TopLevelType().Matches(source.Text) is var types && types.Count != 1 || !source.Text.Contains($" {Path.GetFileNameWithoutExtension(source.Name)}", StringComparison.Ordinal))
        .Select(source => source.Name));

    [Fact]
    public void Namespace_is_one_for_the_whole_file() => Assert.All(
        All.Where(source => !source.Name.EndsWith("Program.cs", StringComparison.Ordinal)), source => Assert.True(FileScoped().IsMatch(source.Text), source.Name));

    [GeneratedRegex(@"(^|/|\w)(Helper|Helpers|Util|Utils|Utility|Utilities|Manager|Managers|Common|Misc)(/|\.cs$)")]
    private static partial Regex KindOfClass();

    [GeneratedRegex(@"^(public|internal) (?:(?:sealed|static|abstract|partial|readonly|ref|unsafe) )*(class|record|struct|enum|interface) ", RegexOptions.Multiline)]
    private static partial Regex TopLevelType();

    [GeneratedRegex(@"^namespace [\w.]+;", RegexOptions.Multiline)]
    private static partial Regex FileScoped();
}
