using Rickyard.Testing;

namespace Rickyard.Tests.Architecture;

/// <summary>The source files below a folder of the repository.</summary>
internal static class Sources
{
    public static IEnumerable<Source> Of(params string[] folder) => Directory.EnumerateFiles(RepositoryFolder.Of(folder), "*.cs", SearchOption.AllDirectories)
        .Select(path => Path.GetRelativePath(RepositoryFolder.Path, path).Replace('\\', '/'))
        .Where(name => !name.Split('/').Any(part => part is "obj" or "bin" or "artifacts"))
        .Select(name => new Source(name, File.ReadAllText(RepositoryFolder.Of(name))));
}
