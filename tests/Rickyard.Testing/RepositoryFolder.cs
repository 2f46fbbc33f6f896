namespace Rickyard.Testing;

/// <summary>The folder that holds the solution, found from where the tests run.</summary>
public static class RepositoryFolder
{
    /// <summary>Whole path of the folder.</summary>
    public static string Path { get; } = Find();

    /// <summary>Whole path of something in it.</summary>
    public static string Of(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "Rickyard.slnx"))) return folder.FullName;
        throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds Rickyard.slnx.");
    }
}
