using CsCheck;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Signs;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

public sealed class SignLikelihoodTests
{
    [Fact]
    public void Seen_and_not_seen_add_to_one() => Gen.Select(Gen.Enum<WoodSign>(), Gen.Double[0, 1.5]).Sample((sign, moisture) =>
        Assert.Equal(1, Math.Exp(Log(sign, true, moisture)) + Math.Exp(Log(sign, false, moisture)), 1e-12));

    [Theory]
    [InlineData(WoodSign.Heavy, true)]
    [InlineData(WoodSign.BubblingEnds, true)]
    [InlineData(WoodSign.Checks, false)]
    [InlineData(WoodSign.BarkLoose, false)]
    [InlineData(WoodSign.Rings, false)]
    public void A_sign_grows_one_way_with_moisture(WoodSign sign, bool ofWetWood)
    {
        for (var moisture = 0.05; moisture < 0.9; moisture += 0.05)
            Assert.Equal(ofWetWood, Log(sign, true, moisture + 0.05) > Log(sign, true, moisture));
    }

    // common practice, no source: green splits bubble and are heavy, seasoned ones check and ring; weights as in physics.md, V6
    [Theory]
    [InlineData(WoodSign.Heavy, 0.70, 0.20, 4.9)]
    [InlineData(WoodSign.BubblingEnds, 0.60, 0.20, 8.8)]
    [InlineData(WoodSign.Checks, 0.14, 0.40, 8.2)]
    [InlineData(WoodSign.BarkLoose, 0.16, 0.60, 3.8)]
    [InlineData(WoodSign.Rings, 0.15, 0.50, 5.5)]
    public void A_sign_has_the_stated_weight(WoodSign sign, double likely, double unlikely, double ratio) =>
        Assert.Equal(ratio, Math.Exp(Log(sign, true, likely) - Log(sign, true, unlikely)), 0.1);

    [Fact]
    public void No_sign_weighs_more_than_nine_to_one() => Gen.Select(Gen.Enum<WoodSign>(), Gen.Bool, Gen.Double[0, 2], Gen.Double[0, 2]).Sample((sign, seen, one, other) =>
        Assert.True(Log(sign, seen, one) - Log(sign, seen, other) <= Math.Log(9) + 1e-9));

    [Fact]
    public void Checks_tell_of_the_end_grain_and_the_others_of_the_whole_piece()
    {
        Assert.Equal(SignLikelihood.LogChance(WoodSign.Checks, true, 0.5, 0.5, 0.5, 0.12), Log(WoodSign.Checks, true, 0.12));
        Assert.Equal(SignLikelihood.LogChance(WoodSign.Heavy, true, 0.7, 0.5, 0.2, 0.12), Log(WoodSign.Heavy, true, 0.5));
    }

    private static double Log(WoodSign sign, bool seen, double moisture) => SignLikelihood.LogChance(sign, seen, moisture, moisture, moisture, moisture);
}
