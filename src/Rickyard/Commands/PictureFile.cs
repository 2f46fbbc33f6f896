using Rickyard.Core.Quantities;
using Rickyard.Store;

namespace Rickyard.Commands;

/// <summary>A picture that a person asks for by a file name, which says its kind.</summary>
internal static class PictureFile
{
    public static void Ask(string? path, OptionReading reading)
    {
        if (path is null) return;
        if (OutputFiles.Check(path, "--picture") is { } problem) reading.Wrong(problem);
        if (!IsSvg(path) && !path.EndsWith(".png", StringComparison.OrdinalIgnoreCase))
            reading.Wrong("--picture", $"\"{path}\" is neither SVG nor PNG by its name.", "End the name with .svg or .png.");
    }

    /// <summary>Writes it, or says why not; nothing where none was asked for.</summary>
    public static Problem? Keep(string? path, Func<byte[]> svg, Func<byte[]> png) =>
        path is null ? null : OutputFiles.Write(path, "--picture", IsSvg(path) ? svg() : png());

    private static bool IsSvg(string path) => path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);
}
