using System.Reflection;
using System.Xml.Linq;
using Rickyard.Testing;
using Xunit;

namespace Rickyard.Tests.Architecture;

/// <summary>Who may know whom: the program knows Web, Store and Core; Web knows Store and Core; Store knows Core; Core knows nobody.</summary>
public sealed class ArrowTests
{
    [Theory]
    [InlineData("Rickyard.Core")]
    [InlineData("Rickyard.Store", "Rickyard.Core")]
    [InlineData("Rickyard.Web", "Rickyard.Core", "Rickyard.Store")]
    [InlineData("Rickyard", "Rickyard.Core", "Rickyard.Store", "Rickyard.Web")]
    public void Project_refers_only_to_what_lies_below_it(string project, params string[] allowed)
    {
        var file = XDocument.Load(RepositoryFolder.Of("src", project, $"{project}.csproj"));
        var known = file.Descendants("ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value));
        Assert.Empty(known.Except(allowed));
    }

    [Theory]
    [InlineData("Rickyard.Core")]
    [InlineData("Rickyard.Store", "Rickyard.Core")]
    [InlineData("Rickyard.Web", "Rickyard.Core", "Rickyard.Store")]
    public void Built_program_part_uses_only_what_lies_below_it(string assembly, params string[] allowed)
    {
        var used = Assembly.Load(assembly).GetReferencedAssemblies().Select(name => name.Name!).Where(IsOurs);
        Assert.Empty(used.Except(allowed));
    }

    private static bool IsOurs(string name) => name.StartsWith("Rickyard", StringComparison.OrdinalIgnoreCase);
}
