namespace Rickyard.Testing;

/// <summary>Real weather files that stand beside the repository, in a folder named shared; tests that need them skip where they are absent.</summary>
public static class SharedWeather
{
    /// <summary>The folder shared/weather beside the repository or one of the folders above it, or null.</summary>
    public static string? Folder { get; } = Find();

    /// <summary>The text of a file below that folder.</summary>
    public static byte[] Read(params string[] parts) => File.ReadAllBytes(Path.Combine([Folder!, .. parts]));

    private static string? Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var candidate = Path.Combine(folder.FullName, "shared", "weather");
            if (Directory.Exists(candidate)) return candidate;
        }

        return null;
    }
}
