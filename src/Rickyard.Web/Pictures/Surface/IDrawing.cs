using Rickyard.Web.Pictures.Colour;

namespace Rickyard.Web.Pictures.Surface;

/// <summary>What a picture is drawn on; what is drawn later lies on top.</summary>
public interface IDrawing
{
    /// <summary>Starts a named part; parts may lie in parts.</summary>
    void Begin(string part);

    /// <summary>Ends the part started last.</summary>
    void End();

    /// <summary>Fills closed outlines; where one lies in another there is a hole.</summary>
    void Fill(IEnumerable<IReadOnlyList<Point>> outlines, Rgb colour, double opacity = 1);

    /// <summary>Draws a line through points.</summary>
    void Line(IReadOnlyList<Point> points, Stroke stroke, bool closed = false);

    /// <summary>Sets a text.</summary>
    void Write(string text, Point at, TextStyle style);
}
