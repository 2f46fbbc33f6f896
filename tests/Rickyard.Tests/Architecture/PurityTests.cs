using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using Xunit;

namespace Rickyard.Tests.Architecture;

/// <summary>Core knows no files, clock, console, web or chance of its own: asked of the built assembly, so that nothing hides in a line.</summary>
public sealed partial class PurityTests
{
    private static readonly string[] ForbiddenTypes =
    [
        "System.IO.File", "System.IO.FileInfo", "System.IO.Directory", "System.IO.DirectoryInfo", "System.IO.FileStream", "System.Console", "System.Environment",
        "System.TimeProvider", "System.Diagnostics.Process", "System.Diagnostics.Stopwatch", "System.Threading.Thread", "System.Threading.Timer",
        "NodaTime.SystemClock", "System.Net.Http.HttpClient", "System.Net.Sockets.Socket",
    ];

    private static readonly string[] ForbiddenMembers =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Random.get_Shared", "System.Guid.NewGuid",
    ];

    // The compiler writes this into every iterator.
    private const string IteratorThread = "System.Environment.get_CurrentManagedThreadId";

    [Fact]
    public void Core_touches_nothing_outside_itself() =>
        Assert.DoesNotContain(
        Members(typeof(Core.Quantities.Problem).Assembly.Location),
        member => member != IteratorThread && (ForbiddenMembers.Contains(member) || ForbiddenTypes.Contains(member[..member.LastIndexOf('.')])));

    [Fact]
    public void Core_makes_no_random_numbers_without_a_seed() =>
        Assert.Empty(Sources.Of("src", "Rickyard.Core").Where(source => Unseeded().IsMatch(source.Text)).Select(source => source.Name));

    [Fact]
    public void Scan_sees_what_it_looks_for() => Assert.Contains("System.IO.File.ReadAllText", Members(typeof(PurityTests).Assembly.Location));

    [GeneratedRegex(@"new (Random|MersenneTwister|Xoshiro256StarStar|SystemRandomSource)\(\)")]
    private static partial Regex Unseeded();

    private static List<string> Members(string assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly));
        var metadata = file.GetMetadataReader();
        var members = metadata.MemberReferences.Select(metadata.GetMemberReference).Where(member => member.Parent.Kind == HandleKind.TypeReference);
        return [.. members.Select(member => $"{NameOf(metadata, (TypeReferenceHandle)member.Parent)}.{metadata.GetString(member.Name)}")];
    }

    private static string NameOf(MetadataReader metadata, TypeReferenceHandle handle)
    {
        var type = metadata.GetTypeReference(handle);
        return $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}";
    }
}
