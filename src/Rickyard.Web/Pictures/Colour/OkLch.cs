namespace Rickyard.Web.Pictures.Colour;

/// <summary>
/// A colour by lightness, chroma and hue in Oklab, a space whose steps of lightness look even
/// (B. Ottosson, "A perceptual color space for image processing", 2020; matrices as published there).
/// </summary>
/// <param name="Lightness">0 black to 1 white.</param>
/// <param name="Chroma">0 grey; about 0.3 the strongest a screen shows.</param>
/// <param name="Hue">Angle; about 30 red, 110 yellow, 145 green, 195 cyan. [°]</param>
public readonly record struct OkLch(double Lightness, double Chroma, double Hue)
{
    /// <summary>The colour of the screen, cut off where the screen cannot show it.</summary>
    public Rgb ToRgb()
    {
        var (red, green, blue) = Linear();
        return new(Encode(red), Encode(green), Encode(blue));
    }

    /// <summary>Whether the screen can show it.</summary>
    public bool IsOnScreen()
    {
        var (red, green, blue) = Linear();
        return Within(red) && Within(green) && Within(blue);
    }

    /// <summary>Lightness in Oklab of a colour of the screen.</summary>
    public static double LightnessOf(Rgb colour)
    {
        double red = Decode(colour.Red), green = Decode(colour.Green), blue = Decode(colour.Blue);
        var l = Math.Cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
        var m = Math.Cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
        var s = Math.Cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
        return 0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s;
    }

    private (double Red, double Green, double Blue) Linear()
    {
        var (sine, cosine) = Math.SinCos(Hue * Math.PI / 180);
        double a = Chroma * cosine, b = Chroma * sine;
        var l = Cube(Lightness + 0.3963377774 * a + 0.2158037573 * b);
        var m = Cube(Lightness - 0.1055613458 * a - 0.0638541728 * b);
        var s = Cube(Lightness - 0.0894841775 * a - 1.2914855480 * b);
        return (4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s);
    }

    private static double Cube(double x) => x * x * x;

    private static bool Within(double linear) => linear is >= -1e-4 and <= 1.0001;

    private static byte Encode(double linear)
    {
        var x = Math.Clamp(linear, 0, 1);
        return (byte)Math.Round(255 * (x <= 0.0031308 ? 12.92 * x : 1.055 * Math.Pow(x, 1 / 2.4) - 0.055));
    }

    private static double Decode(byte value)
    {
        var x = value / 255.0;
        return x <= 0.04045 ? x / 12.92 : Math.Pow((x + 0.055) / 1.055, 2.4);
    }
}
