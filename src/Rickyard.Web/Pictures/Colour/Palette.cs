namespace Rickyard.Web.Pictures.Colour;

/// <summary>Every colour of a picture but those of <see cref="MoistureScale"/>, which stay the same in light and dark.</summary>
public sealed record Palette
{
    /// <summary>On white, for print and sun.</summary>
    public static Palette Light { get; } = new()
    {
        Page = Rgb.From(0xffffff),
        Ink = Rgb.From(0x1b2422),
        Muted = Rgb.From(0x5a6663),
        Hairline = Rgb.From(0xdde2df),
        Accent = Rgb.From(0xb03f14),
        Shade = Rgb.From(0x2f5d63),
        Bark = Rgb.From(0x4b382b),
        Outline = Rgb.From(0x6b6a5c),
    };

    /// <summary>On near-black, for the evening.</summary>
    public static Palette Dark { get; } = new()
    {
        Page = Rgb.From(0x131918),
        Ink = Rgb.From(0xeef2ef),
        Muted = Rgb.From(0xa3b0ac),
        Hairline = Rgb.From(0x2f3a38),
        Accent = Rgb.From(0xff9163),
        Shade = Rgb.From(0x7fb6bb),
        Bark = Rgb.From(0x8d715b),
        Outline = Rgb.From(0x9aa39b),
    };

    /// <summary>Behind everything.</summary>
    public required Rgb Page { get; init; }

    /// <summary>Text and main lines.</summary>
    public required Rgb Ink { get; init; }

    /// <summary>Text of second rank.</summary>
    public required Rgb Muted { get; init; }

    /// <summary>Grid lines.</summary>
    public required Rgb Hairline { get; init; }

    /// <summary>The cook's band and when the wood is ready.</summary>
    public required Rgb Accent { get; init; }

    /// <summary>Spread of the lot.</summary>
    public required Rgb Shade { get; init; }

    /// <summary>Bark.</summary>
    public required Rgb Bark { get; init; }

    /// <summary>Edge of the wood.</summary>
    public required Rgb Outline { get; init; }

    /// <summary>The band's edges on wood: dark on a pale casing, the same in light and dark as the wood is.</summary>
    public Rgb Contour { get; } = Rgb.From(0x8f2d08);

    /// <summary>The casing.</summary>
    public Rgb ContourCasing { get; } = Rgb.From(0xfff6ea);
}
