using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures;

/// <summary>A bar of a round length that says how large the wood is drawn.</summary>
internal static class LengthBar
{
    private const double Longest = 70;

    private static readonly int[] Millimetres = [500, 200, 100, 50, 20, 10, 5, 2, 1];

    /// <summary>Draws it rightward from a point.</summary>
    /// <param name="drawing">What it is drawn on.</param>
    /// <param name="palette">Colours.</param>
    /// <param name="at">Its left end. [px]</param>
    /// <param name="scale">[px m⁻¹]</param>
    public static void Draw(IDrawing drawing, Palette palette, Point at, double scale)
    {
        var length = Millimetres.FirstOrDefault(length => length * scale / 1000 <= Longest, 1);
        var right = at.X + length * scale / 1000;
        drawing.Line([new(at.X, at.Y - 3), new(at.X, at.Y + 3)], new(palette.Muted, 1, Blunt: true));
        drawing.Line([new(right, at.Y - 3), new(right, at.Y + 3)], new(palette.Muted, 1, Blunt: true));
        drawing.Line([at, new(right, at.Y)], new(palette.Muted, 1, Blunt: true));
        drawing.Write(FormattableString.Invariant($"{length} mm"), new(right + 7, at.Y + 4), new(12, palette.Muted));
    }
}
