namespace Rickyard.Web.Pictures.Surface;

/// <summary>An upright rectangle, y downward.</summary>
public readonly record struct Box(double Left, double Top, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => Left + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Top + Height;

    /// <summary>Middle.</summary>
    public Point Centre => new(Left + Width / 2, Top + Height / 2);

    /// <summary>Its corners, in order round it.</summary>
    public IReadOnlyList<Point> Corners => [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];

    /// <summary>The least one that holds all the points.</summary>
    public static Box Round(IEnumerable<Point> points)
    {
        double left = double.MaxValue, top = double.MaxValue, right = double.MinValue, bottom = double.MinValue;
        foreach (var (x, y) in points)
        {
            (left, right) = (Math.Min(left, x), Math.Max(right, x));
            (top, bottom) = (Math.Min(top, y), Math.Max(bottom, y));
        }

        return new(left, top, right - left, bottom - top);
    }
}
