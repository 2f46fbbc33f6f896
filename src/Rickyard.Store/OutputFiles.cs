using Rickyard.Core.Quantities;

namespace Rickyard.Store;

/// <summary>
/// Writes the files a person asks for. A file is written beside its target under another name and then moved over it, so that at any moment
/// the target is the old file whole or the new file whole.
/// </summary>
public static class OutputFiles
{
    /// <summary>Why a file cannot be written there, or null when it can; asked before long work. Leaves nothing behind.</summary>
    /// <param name="path">As the person gave it.</param>
    /// <param name="field">Option or key it came from.</param>
    public static Problem? Check(string path, string field) => Attempt(path, field, () =>
    {
        var trial = BesideOf(path);
        using var made = new FileStream(trial, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
    });

    /// <summary>Writes the whole file, or leaves what was there and says why.</summary>
    /// <param name="path">As the person gave it.</param>
    /// <param name="field">Option or key it came from.</param>
    /// <param name="content">All of it.</param>
    public static Problem? Write(string path, string field, byte[] content)
    {
        var beside = "";
        var problem = Attempt(path, field, () =>
        {
            beside = BesideOf(path);
            using (var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        });
        if (problem is not null) Remove(beside);
        return problem;
    }

    private static Problem? Attempt(string path, string field, Action action)
    {
        const string Elsewhere = "Give a path in a folder that exists and that you may write to.";
        try
        {
            if (string.IsNullOrWhiteSpace(path)) return new(field, "The path is empty.", Elsewhere);
            if (Directory.Exists(path)) return new(field, $"\"{path}\" is a folder, not a file.", "Add a file name to it.");
            action();
            return null;
        }
        catch (DirectoryNotFoundException)
        {
            return new(field, $"\"{path}\" cannot be written: its folder does not exist.", Elsewhere);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException or ArgumentException or NotSupportedException)
        {
            return new(field, $"\"{path}\" cannot be written: {failure.Message}", Elsewhere);
        }
    }

    private static string BesideOf(string path)
    {
        var whole = Path.GetFullPath(path);
        return Path.Combine(Path.GetDirectoryName(whole) ?? whole, $".{Path.GetFileName(whole)}.{Guid.NewGuid():N}.part");
    }

    private static void Remove(string beside)
    {
        if (beside.Length == 0) return;
        try
        {
            File.Delete(beside);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            // The target is untouched, which is what was promised; a leftover beside it is named so that its origin is plain.
        }
    }
}
