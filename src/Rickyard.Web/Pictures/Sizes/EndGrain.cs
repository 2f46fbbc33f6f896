using Rickyard.Core.Planning;
using Rickyard.Core.Splits;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Sizes;

/// <summary>The end grain of a piece as an outline about its middle, bark side up, and the line along which its width is measured. [m]</summary>
/// <param name="Outline">Closed.</param>
/// <param name="From">One end of the width.</param>
/// <param name="To">The other.</param>
internal sealed record EndGrain(IReadOnlyList<Point> Outline, Point From, Point To)
{
    private const int Arc = 12;

    public static EndGrain Of(Split split)
    {
        var (outline, from, to) = split.IsPolar ? Polar(split) : Block(split.Outer, split.Angle);
        var middle = Box.Round(outline).Centre;
        Point Centred(Point point) => new(point.X - middle.X, point.Y - middle.Y);
        return new([.. outline.Select(Centred)], Centred(from), Centred(to));
    }

    /// <summary>Its outline on the page.</summary>
    public IReadOnlyList<Point> At(Point centre, double scale) => [.. Outline.Select(point => Placed(point, centre, scale))];

    /// <summary>A point of it on the page.</summary>
    public static Point Placed(Point point, Point centre, double scale) => new(centre.X + point.X * scale, centre.Y + point.Y * scale);

    private static (Point[] Outline, Point From, Point To) Block(double width, double height) =>
        ([new(0, 0), new(width, 0), new(width, height), new(0, height)], new(0, height), width >= height ? new(width, height) : new(0, 0));

    private static (Point[] Outline, Point From, Point To) Polar(Split split)
    {
        Point On(double radius, double share) => new(radius * Math.Sin((share - 0.5) * split.Angle), -radius * Math.Cos((share - 0.5) * split.Angle));
        var outer = Enumerable.Range(0, Arc + 1).Select(i => On(split.Outer, i / (double)Arc));
        Point[] inner = split.Inner > 0 ? [.. Enumerable.Range(0, Arc + 1).Select(i => On(split.Inner, 1 - i / (double)Arc))] : split.Shape == SplitShape.Round ? [] : [new(0, 0)];
        Point[] outline = [.. outer, .. inner];
        if (split.Shape == SplitShape.Round) return (outline, new(-split.Outer, 0), new(split.Outer, 0));
        var width = SplitWidth.Across(split);
        (Point, Point)[] ways = [(On(split.Inner, 1), On(split.Outer, 1)), (On(split.Outer, 0), On(split.Outer, 1)), (On(split.Inner, 0), On(split.Outer, 1))];
        var (from, to) = ways.MinBy(way => Math.Abs(Distance(way.Item1, way.Item2) - width));
        return (outline, from, to);
    }

    private static double Distance(Point one, Point other) => Math.Sqrt((one.X - other.X) * (one.X - other.X) + (one.Y - other.Y) * (one.Y - other.Y));
}
