namespace Rickyard.Tests;

/// <summary>An empty folder that is gone after the test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rickyard-").FullName;

    /// <summary>Whole path of a name in it.</summary>
    public string Of(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Whole path of a new file in it.</summary>
    public string Write(string name, string text)
    {
        File.WriteAllText(Of(name), text);
        return Of(name);
    }

    /// <summary>Names in it, in order.</summary>
    public IEnumerable<string> Names => Directory.EnumerateFileSystemEntries(Path).Select(entry => System.IO.Path.GetFileName(entry)).Order(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
