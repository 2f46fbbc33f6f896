using System.Globalization;
using System.Security;
using System.Text;
using Rickyard.Web.Pictures.Colour;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>Writes the drawing as SVG: shapes as paths to a tenth of a pixel, text as text in the reader's system font.</summary>
public sealed class SvgDrawing : IDrawing
{
    private const string SystemFonts = "system-ui, -apple-system, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif";

    private readonly StringBuilder _body = new();

    /// <inheritdoc/>
    public void Begin(string part) => _body.Append(CultureInfo.InvariantCulture, $"<g class=\"{Escaped(part)}\">\n");

    /// <inheritdoc/>
    public void End() => _body.Append("</g>\n");

    /// <inheritdoc/>
    public void Fill(IEnumerable<IReadOnlyList<Point>> outlines, Rgb colour, double opacity = 1)
    {
        _body.Append("<path d=\"");
        foreach (var outline in outlines) AppendPath(outline, closed: true);
        _body.Append(CultureInfo.InvariantCulture, $"\" fill=\"{colour.Hex}\" fill-rule=\"evenodd\"");
        if (opacity < 1) _body.Append(CultureInfo.InvariantCulture, $" fill-opacity=\"{opacity:0.##}\"");
        _body.Append("/>\n");
    }

    /// <inheritdoc/>
    public void Line(IReadOnlyList<Point> points, Stroke stroke, bool closed = false)
    {
        _body.Append("<path d=\"");
        AppendPath(points, closed);
        _body.Append(CultureInfo.InvariantCulture, $"\" fill=\"none\" stroke=\"{stroke.Colour.Hex}\" stroke-width=\"{stroke.Width:0.##}\"");
        if (!stroke.Blunt) _body.Append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        var dash = DashLengths.Of(stroke.Dash);
        if (dash.Length > 0) _body.Append(CultureInfo.InvariantCulture, $" stroke-dasharray=\"{string.Join(' ', dash.Select(Number))}\"");
        _body.Append("/>\n");
    }

    /// <inheritdoc/>
    public void Write(string text, Point at, TextStyle style)
    {
        _body.Append(CultureInfo.InvariantCulture, $"<text x=\"{Number(at.X)}\" y=\"{Number(at.Y)}\" font-size=\"{Number(style.Size)}\" fill=\"{style.Colour.Hex}\"");
        if (style.Bold) _body.Append(" font-weight=\"700\"");
        if (style.Anchor != Anchor.Start) _body.Append(style.Anchor == Anchor.Middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        _body.Append(CultureInfo.InvariantCulture, $">{Escaped(text)}</text>\n");
    }

    /// <summary>The whole document.</summary>
    /// <param name="width">[px]</param>
    /// <param name="height">[px]</param>
    /// <param name="page">Colour behind everything.</param>
    /// <param name="title">Name of the picture, for screen readers.</param>
    /// <param name="description">What it shows, for those who do not see it.</param>
    public string Document(double width, double height, Rgb page, string title, string description)
    {
        var (w, h) = (Number(width), Number(height));
        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{w}" height="{h}" viewBox="0 0 {w} {h}" role="img" font-family="{SystemFonts}" style="font-variant-numeric:tabular-nums;max-width:100%;height:auto">
            <title>{Escaped(title)}</title>
            <desc>{Escaped(description)}</desc>
            <rect width="{w}" height="{h}" fill="{page.Hex}"/>
            {_body}</svg>

            """;
    }

    private void AppendPath(IReadOnlyList<Point> points, bool closed)
    {
        for (var i = 0; i < points.Count; i++)
        {
            if (i < 2) _body.Append(i == 0 ? 'M' : 'L');
            else _body.Append(' ');
            _body.Append(Number(points[i].X)).Append(' ').Append(Number(points[i].Y));
        }

        if (closed) _body.Append('Z');
    }

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Escaped(string text) => SecurityElement.Escape(CleanText.Of(text));
}
