using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>Lines with no more points than the eye needs.</summary>
public static class Outline
{
    /// <summary>The line without points that lie nearer than a tolerance to the line through those kept (D. Douglas and T. Peucker, 1973).</summary>
    public static IReadOnlyList<Point> Thinned(IReadOnlyList<Point> points, double tolerance)
    {
        if (points.Count < 3) return points;
        var keep = new bool[points.Count];
        keep[0] = keep[^1] = true;
        var spans = new Stack<(int First, int Last)>([(0, points.Count - 1)]);
        while (spans.TryPop(out var span))
        {
            var (index, distance) = Farthest(points, span.First, span.Last);
            if (distance <= tolerance) continue;
            keep[index] = true;
            spans.Push((span.First, index));
            spans.Push((index, span.Last));
        }

        return [.. points.Where((_, i) => keep[i])];
    }

    private static (int Index, double Distance) Farthest(IReadOnlyList<Point> points, int first, int last)
    {
        (int Index, double Distance) farthest = (first, 0);
        for (var i = first + 1; i < last; i++)
        {
            var distance = Distance(points[i], points[first], points[last]);
            if (distance > farthest.Distance) farthest = (i, distance);
        }

        return farthest;
    }

    private static double Distance(Point p, Point a, Point b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, length = dx * dx + dy * dy;
        var share = length > 0 ? Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / length, 0, 1) : 0;
        return Math.Sqrt(Square(p.X - a.X - share * dx) + Square(p.Y - a.Y - share * dy));
    }

    private static double Square(double x) => x * x;
}
