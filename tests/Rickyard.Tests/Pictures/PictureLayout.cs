using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Pictures;

/// <summary>What every picture keeps to: its labels and shapes stay on the canvas, and labels leave each other room.</summary>
internal static class PictureLayout
{
    /// <summary>Coordinates are rounded to a tenth.</summary>
    private const double Rounding = 0.11;

    /// <summary>Labels, in the widest common font, lie on the canvas.</summary>
    public static void LabelsStayOnTheCanvas(SvgReading picture) =>
        Assert.All(picture.Texts, text => Assert.True(Holds(picture.Canvas, text.Value), $"\"{text.Key}\" at {text.Value} leaves {picture.Canvas}"));

    /// <summary>No two labels overlap.</summary>
    public static void LabelsLeaveEachOtherRoom(SvgReading picture)
    {
        var clashes = picture.Texts.SelectMany((one, i) => picture.Texts.Skip(i + 1).Where(other => Meet(one.Value, other.Value)).Select(other => $"\"{one.Key}\" and \"{other.Key}\""));
        Assert.Empty(clashes);
    }

    /// <summary>Shapes lie on the canvas.</summary>
    public static void ShapesStayOnTheCanvas(SvgReading picture) =>
        Assert.All(picture.AllPoints(), point => Assert.True(Holds(picture.Canvas, new(point.X, point.Y, 0, 0)), $"{point} leaves {picture.Canvas}"));

    /// <summary>Whether a box lies in another.</summary>
    public static bool Holds(Box outer, Box inner) =>
        inner.Left >= outer.Left - Rounding && inner.Right <= outer.Right + Rounding && inner.Top >= outer.Top - Rounding && inner.Bottom <= outer.Bottom + Rounding;

    private static bool Meet(Box one, Box other) => one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;
}
