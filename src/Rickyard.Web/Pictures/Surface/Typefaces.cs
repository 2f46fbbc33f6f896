using SkiaSharp;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>The two embedded faces, so that text does not depend on what the machine has. Loaded once, safe from several threads.</summary>
internal static class Typefaces
{
    private static readonly SKTypeface Regular = Load("Roboto-Regular.ttf");
    private static readonly SKTypeface Bold = Load("Roboto-Bold.ttf");

    /// <summary>A font of that size; the caller disposes of it.</summary>
    public static SKFont Font(double size, bool bold) => new(bold ? Bold : Regular, (float)size)
    {
        Subpixel = true,
        Edging = SKFontEdging.Antialias,
        Hinting = SKFontHinting.None,
    };

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(Typefaces).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The embedded font {name} is missing from the build.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data);
    }
}
