using CsCheck;
using Rickyard.Web.Pictures.Colour;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class OkLchTests
{
    // Lightness of the primaries in Oklab as the sample values of CSS Color Module Level 4 give them (from memory).
    [Theory]
    [InlineData(0xffffff, 1)]
    [InlineData(0x000000, 0)]
    [InlineData(0xff0000, 0.628)]
    [InlineData(0x00ff00, 0.866)]
    [InlineData(0x0000ff, 0.452)]
    public void Lightness_of_primaries_agrees_with_published_values(int colour, double lightness) =>
        Assert.Equal(lightness, OkLch.LightnessOf(Rgb.From(colour)), 3);

    [Fact]
    public void Lightness_survives_the_way_to_the_screen() => Gen.Select(Gen.Double[0.1, 0.95], Gen.Double[0, 0.2], Gen.Double[0, 360]).Sample((lightness, chroma, hue) =>
    {
        var colour = new OkLch(lightness, chroma, hue);
        return !colour.IsOnScreen() || Math.Abs(OkLch.LightnessOf(colour.ToRgb()) - lightness) < 0.005;
    });

    [Fact]
    public void Colour_without_chroma_is_grey() => Gen.Double[0, 1].Sample(lightness =>
    {
        var (red, green, blue) = new OkLch(lightness, 0, 0).ToRgb();
        return red == green && green == blue;
    });
}
