using Rickyard.Web.Pictures;
using Rickyard.Web.Pictures.Colour;
using Rickyard.Web.Pictures.Surface;
using SkiaSharp;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class PngPictureTests
{
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(0.5, false)]
    public void Image_has_the_size_of_the_drawing_times_its_dots(double dots, bool narrow)
    {
        var canvas = new SvgReading(RunPicture.Svg(Samples.Wedge, new(Narrow: narrow))).Canvas;
        using var image = Image(new(Narrow: narrow, DotsPerPixel: dots));
        Assert.Equal((Math.Round(dots * canvas.Width), Math.Round(dots * canvas.Height)), (image.Width, image.Height));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Wood_has_the_colour_of_its_moisture(bool dark)
    {
        var cuts = new SvgReading(RunPicture.Svg(Samples.Wedge, new(dark))).Groups("moisture");
        using var image = Image(new(dark, DotsPerPixel: 1));
        var green = Pixel(image, Box.Round(cuts[0][0]).Centre);
        var dry = Pixel(image, Box.Round(cuts[^2][0]).Centre);
        Assert.InRange(Difference(green, MoistureScale.Colour(0.72)), 0, 4);
        Assert.True(OkLch.LightnessOf(dry) > OkLch.LightnessOf(green) + 0.2);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Answer_is_written_where_it_belongs(bool dark)
    {
        using var image = Image(new(dark, DotsPerPixel: 1));
        var room = new SvgReading(RunPicture.Svg(Samples.Wedge, new(dark))).Texts.Single(text => text.Key.StartsWith("Ready from", StringComparison.Ordinal)).Value;
        var page = OkLch.LightnessOf(Pixel(image, new(2, 2)));
        var inked = Points(room).Count(point => Math.Abs(OkLch.LightnessOf(Pixel(image, point)) - page) > 0.5);
        Assert.InRange(inked / (room.Width * room.Height), 0.08, 0.5);
    }

    [Fact]
    public void Image_of_the_same_run_is_the_same() => Assert.Equal(RunPicture.Png(Samples.Wedge), RunPicture.Png(Samples.Wedge));

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(double.NaN)]
    public void Dots_out_of_range_are_refused(double dots) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RunPicture.Png(Samples.Wedge, new(DotsPerPixel: dots)));

    private static SKBitmap Image(PictureOptions options) => SKBitmap.Decode(RunPicture.Png(Samples.Wedge, options));

    private static Rgb Pixel(SKBitmap image, Point at)
    {
        var colour = image.GetPixel((int)at.X, (int)at.Y);
        return new(colour.Red, colour.Green, colour.Blue);
    }

    private static IEnumerable<Point> Points(Box box)
    {
        for (var x = box.Left; x < box.Right; x++)
        for (var y = box.Top; y < box.Bottom; y++)
            yield return new(x, y);
    }

    private static int Difference(Rgb one, Rgb other) =>
        Math.Max(Math.Abs(one.Red - other.Red), Math.Max(Math.Abs(one.Green - other.Green), Math.Abs(one.Blue - other.Blue)));
}
