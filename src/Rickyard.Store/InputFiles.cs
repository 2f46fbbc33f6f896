using System.Text;
using Rickyard.Core.Quantities;

namespace Rickyard.Store;

/// <summary>Reads the files a person names; whatever keeps one from being read is a problem that names its path.</summary>
public static class InputFiles
{
    /// <summary>Largest file read. [bytes]</summary>
    public const long LargestBytes = 64L * 1024 * 1024;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>All bytes of a file.</summary>
    /// <param name="path">As the person gave it, for reading and for messages.</param>
    public static Result<byte[]> ReadBytes(string path)
    {
        try
        {
            return Directory.Exists(path) ? Failure<byte[]>(path, "It is a folder, not a file.", "Name a file in it.") : ReadWithin(path);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Failure<byte[]>(path, "There is no such file.", "Check the name and the folder; a weather file is looked for from the folder of its case file.");
        }
        catch (UnauthorizedAccessException)
        {
            return Failure<byte[]>(path, "Reading it is not permitted.", "Give yourself the right to read it, or copy it to a place of your own.");
        }
        catch (Exception failure) when (failure is IOException or ArgumentException or NotSupportedException)
        {
            return Failure<byte[]>(path, $"It cannot be read: {failure.Message}", "Check the path and the disk.");
        }
    }

    /// <summary>The text of a UTF-8 file.</summary>
    /// <param name="path">As the person gave it.</param>
    public static Result<string> ReadText(string path)
    {
        var read = ReadBytes(path);
        if (!read.TryGet(out var bytes)) return ResultOf.Failure<string>(read.Problems);
        try
        {
            return ResultOf.Success(StrictUtf8.GetString(bytes));
        }
        catch (DecoderFallbackException)
        {
            return Failure<string>(path, $"It is not UTF-8 text: line {LineOfFault(bytes)} holds other bytes (Latin-1 perhaps).", "Save it as UTF-8.");
        }
    }

    private static Result<byte[]> ReadWithin(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var kept = new MemoryStream();
        var buffer = new byte[81920];
        int count;
        while ((count = file.Read(buffer)) > 0)
        {
            if (kept.Length + count > LargestBytes) return Failure<byte[]>(path, $"It is larger than {LargestBytes >> 20} MB.", "Give a smaller file: one place, a few years.");
            kept.Write(buffer, 0, count);
        }

        return ResultOf.Success(kept.ToArray());
    }

    // The first line that is not UTF-8 by itself; a line break never lies inside a character.
    private static int LineOfFault(byte[] bytes)
    {
        var line = 1;
        foreach (var range in bytes.AsSpan().Split((byte)'\n'))
        {
            if (!System.Text.Unicode.Utf8.IsValid(bytes.AsSpan()[range])) break;
            line++;
        }

        return line;
    }

    private static Result<T> Failure<T>(string path, string whatIsWrong, string whatToDo)
        where T : class => ResultOf.Failure<T>(path, whatIsWrong, whatToDo);
}
