using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>Finds a free place near a point for a short text, one after the other, so that none covers another.</summary>
/// <param name="room">In which they must stay. [px]</param>
internal sealed class NumberPlaces(Box room)
{
    private const int Directions = 16;
    private const double Farthest = 160;
    private const double Apart = 2;

    private readonly List<Box> _taken = [];

    /// <summary>Takes the nearest free place.</summary>
    /// <param name="centre">Near which. [px]</param>
    /// <param name="width">Of the text in the widest font. [px]</param>
    /// <param name="size">Of its letters. [px]</param>
    /// <param name="least">Least distance from the centre; 0 where it may stand on it. [px]</param>
    /// <returns>Its middle on the base line, and the point of its box that is nearest to the centre. [px]</returns>
    public (Point Base, Point Foot) Take(Point centre, double width, double size, double least)
    {
        var middle = Tries(centre, width, size, least).FirstOrDefault(at => IsFree(BoxAt(at, width, size)), centre);
        var box = BoxAt(middle, width, size);
        _taken.Add(box);
        return (new(middle.X, middle.Y + 0.35 * size), new(Math.Clamp(centre.X, box.Left, box.Right), Math.Clamp(centre.Y, box.Top, box.Bottom)));
    }

    private static IEnumerable<Point> Tries(Point centre, double width, double size, double least)
    {
        if (least <= 0) yield return centre;
        for (var far = Math.Max(least, 14); far <= Farthest; far += 6)
        for (var turn = 0; turn < Directions; turn++)
        {
            var angle = 2 * Math.PI * turn / Directions;
            yield return new(centre.X + (far + width / 2) * Math.Cos(angle), centre.Y - (far + size / 2) * Math.Sin(angle));
        }
    }

    private bool IsFree(Box box) => box.Left >= room.Left && box.Right <= room.Right && box.Top >= room.Top && box.Bottom <= room.Bottom
        && _taken.TrueForAll(other => box.Right + Apart < other.Left || other.Right + Apart < box.Left || box.Bottom + Apart < other.Top || other.Bottom + Apart < box.Top);

    private static Box BoxAt(Point middle, double width, double size) => new(middle.X - width / 2, middle.Y - size / 2, width, size);
}
