namespace Rickyard.Web.Pictures.Colour;

/// <summary>A colour of the screen (sRGB), eight bits a channel.</summary>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>The way SVG and CSS write it.</summary>
    public string Hex => $"#{Red:x2}{Green:x2}{Blue:x2}";

    /// <summary>From a number written 0xRRGGBB.</summary>
    public static Rgb From(int value) => new((byte)(value >> 16), (byte)(value >> 8), (byte)value);
}
