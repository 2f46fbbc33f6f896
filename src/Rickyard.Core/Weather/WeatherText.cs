using System.IO.Compression;
using System.Text;
using Rickyard.Core.Quantities;

namespace Rickyard.Core.Weather;

/// <summary>Turns the bytes of a weather file into text: gzip or plain; byte-order mark, UTF-8, or Latin-1 where the bytes are not UTF-8.</summary>
public static class WeatherText
{
    /// <summary>Largest text accepted after unpacking. [bytes]</summary>
    public const int LargestBytes = 256 * 1024 * 1024;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a weather file.</summary>
    /// <param name="bytes">The whole file as stored.</param>
    /// <param name="name">Name of the file, for messages.</param>
    public static Result<string> Decode(ReadOnlySpan<byte> bytes, string name = "weather file")
    {
        if (bytes is not [0x1F, 0x8B, ..]) return ResultOf.Success(Characters(bytes));
        try
        {
            return Unpack(bytes) is { } plain
                ? ResultOf.Success(Characters(plain))
                : ResultOf.Failure<string>(name, $"It unpacks to more than {LargestBytes >> 20} MB.", "Give a file of one place and a few years.");
        }
        catch (InvalidDataException)
        {
            return ResultOf.Failure<string>(name, "It begins like a gzip file but cannot be unpacked.", "Fetch it again, or unpack it first.");
        }
    }

    private static byte[]? Unpack(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream(bytes.ToArray());
        using var unpacking = new GZipStream(packed, CompressionMode.Decompress);
        using var plain = new MemoryStream();
        var buffer = new byte[81920];
        int count;
        while ((count = unpacking.Read(buffer)) > 0)
        {
            if (plain.Length + count > LargestBytes) return null;
            plain.Write(buffer, 0, count);
        }

        return plain.ToArray();
    }

    private static string Characters(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xEF, 0xBB, 0xBF, ..]) bytes = bytes[3..];
        if (bytes is [0xFF, 0xFE, ..]) return Encoding.Unicode.GetString(bytes[2..]);
        if (bytes is [0xFE, 0xFF, ..]) return Encoding.BigEndianUnicode.GetString(bytes[2..]);
        try
        {
            return StrictUtf8.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
