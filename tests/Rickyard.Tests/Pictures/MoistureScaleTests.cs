using CsCheck;
using Rickyard.Web.Pictures.Colour;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class MoistureScaleTests
{
    [Fact]
    public void Lightness_falls_in_even_steps_from_dry_to_wet()
    {
        var lightness = Enumerable.Range(0, 65).Select(step => OkLch.LightnessOf(MoistureScale.At(step / 64.0).ToRgb())).ToArray();
        var even = (lightness[0] - lightness[^1]) / 64;
        Assert.True(even > 0.009, $"a step is {even:0.0000}");
        // Eight bits a channel move a step by up to about 0.003.
        Assert.All(lightness.Zip(lightness.Skip(1), (one, next) => one - next), step => Assert.InRange(step, even - 0.003, even + 0.003));
    }

    [Fact]
    public void Every_colour_can_be_shown() => Assert.All(Enumerable.Range(0, 257), step => Assert.True(MoistureScale.At(step / 256.0).IsOnScreen(), $"step {step}"));

    [Fact]
    public void Scale_runs_from_straw_to_blue_green()
    {
        Rgb dry = MoistureScale.Colour(0), wet = MoistureScale.Colour(MoistureScale.Wettest);
        Assert.True(dry.Red >= dry.Green && dry.Green > dry.Blue && dry.Red > 230, dry.Hex);
        Assert.True(wet.Blue > wet.Red && wet.Green > wet.Red && wet.Green < 90, wet.Hex);
    }

    [Fact]
    public void Wetter_is_never_lighter() => Gen.Double[0, 2].Array[2].Sample(pair =>
        MoistureScale.Place(pair.Max()) >= MoistureScale.Place(pair.Min()));

    [Fact]
    public void Moisture_at_its_own_place_is_itself() => Gen.Double[0, MoistureScale.Wettest].Sample(moisture =>
        Math.Abs(MoistureScale.MoistureAt(MoistureScale.Place(moisture)) - moisture) < 1e-9);

    [Fact]
    public void Moisture_beyond_the_scale_is_shown_as_its_end()
    {
        Assert.Equal(MoistureScale.Colour(MoistureScale.Wettest), MoistureScale.Colour(3));
        Assert.Equal(MoistureScale.Colour(0), MoistureScale.Colour(-0.01));
    }
}
