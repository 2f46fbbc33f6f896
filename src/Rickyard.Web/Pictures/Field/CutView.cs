using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>Draws a cut on the page: bark, shades of moisture, the edges of the cook's band, the edge of the wood.</summary>
/// <param name="drawing">What it is drawn on.</param>
/// <param name="palette">Colours.</param>
/// <param name="bandLow">Lower edge of the band. [kg kg⁻¹]</param>
/// <param name="bandHigh">Upper edge. [kg kg⁻¹]</param>
public sealed class CutView(IDrawing drawing, Palette palette, double bandLow, double bandHigh)
{
    /// <summary>Width of the rim of bark. [px]</summary>
    public const double BarkWidth = 4;

    private const int Shades = 96;
    private const double Tolerance = 0.12;

    /// <summary>How the upper edge of the band is drawn, here and wherever it appears.</summary>
    public static Stroke HighEdge(Rgb colour) => new(colour, 1.4);

    /// <summary>How the lower edge is drawn.</summary>
    public static Stroke LowEdge(Rgb colour) => new(colour, 1.4, Dash.Short);

    /// <summary>Draws the cut about a point of the page.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="centre">Where its middle comes to lie. [px]</param>
    /// <param name="scale">[px m⁻¹]</param>
    public void Draw(Cut cut, Point centre, double scale)
    {
        var middle = cut.Extent.Centre;
        Point OnPage(Point p) => new(centre.X + scale * (p.X - middle.X), centre.Y + scale * (p.Y - middle.Y));
        IReadOnlyList<Point> Line(IReadOnlyList<Point> line) => Outline.Thinned([.. line.Select(OnPage)], Tolerance);

        foreach (var bark in cut.Bark) drawing.Line(Line(bark), new(palette.Bark, 2 * BarkWidth, Blunt: true));
        DrawShades(cut.Mesh, Line);
        DrawBand(cut.Mesh, Line);
        // A disc's innermost ring of points shrinks to the pith and is no edge.
        foreach (var edge in LevelTracer.Region(cut.Mesh, double.NegativeInfinity).Select(Line).Where(edge => edge.Count > 2))
            drawing.Line(edge, new(palette.Outline, 1), closed: true);
    }

    private void DrawShades(FieldMesh mesh, Func<IReadOnlyList<Point>, IReadOnlyList<Point>> line)
    {
        drawing.Begin("moisture");
        int first = Shade(mesh.Least), last = Shade(mesh.Most);
        for (var shade = first; shade <= last; shade++)
        {
            var level = shade == first ? double.NegativeInfinity : MoistureScale.MoistureAt((double)shade / Shades);
            drawing.Fill(LevelTracer.Region(mesh, level).Select(line), MoistureScale.At((shade + 0.5) / Shades).ToRgb());
        }

        drawing.End();
    }

    private void DrawBand(FieldMesh mesh, Func<IReadOnlyList<Point>, IReadOnlyList<Point>> line)
    {
        drawing.Begin("band");
        foreach (var (level, stroke) in new[] { (bandHigh, HighEdge(palette.Contour)), (bandLow, LowEdge(palette.Contour)) })
        {
            foreach (var contour in LevelTracer.Contours(mesh, level))
            {
                drawing.Line(line(contour), stroke with { Colour = palette.ContourCasing, Width = stroke.Width + 1.6 });
                drawing.Line(line(contour), stroke);
            }
        }

        drawing.End();
    }

    private static int Shade(double moisture) => Math.Min(Shades - 1, (int)(Shades * MoistureScale.Place(moisture)));
}
