using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Meters;
using Rickyard.Core.Wood;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

public sealed class PinCorrectionTests
{
    // Derived from James 1988, Table 1: what a Douglas-fir scale that shows 20 at 27 °C means.
    [Theory]
    [InlineData("shagbark hickory", 17.2)]
    [InlineData("white oak", 18.5)]
    [InlineData("northern red oak", 19.9)]
    [InlineData("sugar maple", 20.1)]
    [InlineData("black ash", 17.0)]
    [InlineData("paper birch", 20.4)]
    public void Twenty_on_a_Douglas_fir_scale_is_the_published_moisture(string wood, double percent) =>
        Assert.Equal(percent, 100 * Of(wood, 0.20, 26.7).Moisture, 0.1);

    [Fact]
    public void Meter_set_to_the_wood_itself_needs_no_species_correction()
    {
        var scale = MeterScale.Find("hickory", "--scale").Value!;
        var corrected = PinCorrection.Of(new(0.17, ShownRange.Number, scale, 26.7), Wood("shagbark hickory"));
        Assert.Equal(0.17, corrected.Moisture, 1e-9);
    }

    [Fact]
    public void Moisture_shown_comes_back_as_that_moisture() => Assert.All(SpeciesCatalogue.All, species =>
    {
        foreach (var celsius in new[] { -10.0, 5, 20, 40 })
        foreach (var moisture in new[] { 0.09, 0.14, 0.20 })
        {
            var shown = PinCorrection.Shown(moisture, species, MeterScale.DouglasFir, celsius);
            Assert.Equal(moisture, PinCorrection.Of(new(shown, ShownRange.Number, MeterScale.DouglasFir, celsius), species).Moisture, 1e-6);
        }
    });

    [Fact]
    public void More_on_the_display_is_never_drier_and_lies_in_its_range()
    {
        foreach (var wood in new[] { "shagbark hickory", "black cherry", "European oak" })
        {
            double before = 0;
            for (var shown = 0.07; shown < 0.22; shown += 0.005)
            {
                var corrected = Of(wood, shown, 12);
                Assert.True(corrected.Moisture >= before);
                Assert.InRange(corrected.Moisture, corrected.Low, corrected.High);
                before = corrected.Moisture;
            }
        }
    }

    [Theory]
    [InlineData("northern red oak", 0.33, MeterVerdict.AtLeast, 0.28)]
    [InlineData("shagbark hickory", 0.31, MeterVerdict.AtLeast, 0.23)]
    [InlineData("northern red oak", 0.05, MeterVerdict.AtMost, 0.06)]
    public void Beyond_what_a_meter_is_good_for_only_a_bound_is_left(string wood, double shown, MeterVerdict verdict, double bound)
    {
        // About 28 % and 6 % (Wengert, text); the printed hickory row is level from 23 %.
        var corrected = Of(wood, shown, 26.7);
        Assert.Equal(verdict, corrected.Verdict);
        Assert.Equal(bound, corrected.Moisture, 1e-9);
    }

    [Fact]
    public void Off_the_scale_is_a_bound_and_a_number_beside_it_counts()
    {
        var over = PinCorrection.Of(new(0, ShownRange.Over, MeterScale.DouglasFir, 20), Wood("northern red oak"));
        Assert.Equal((MeterVerdict.AtLeast, 0.28), (over.Verdict, over.Moisture));
        var above = PinCorrection.Of(new(0.20, ShownRange.Over, MeterScale.DouglasFir, 26.7), Wood("northern red oak"));
        Assert.Equal(MeterVerdict.AtLeast, above.Verdict);
        Assert.Equal(0.199, above.Moisture, 0.001);
        var under = PinCorrection.Of(new(0, ShownRange.Under, MeterScale.DouglasFir, 20), Wood("northern red oak"));
        Assert.Equal((MeterVerdict.AtMost, 0.06), (under.Verdict, under.Moisture));
    }

    [Fact]
    public void Range_widens_with_cold_with_an_unknown_temperature_and_with_a_borrowed_curve()
    {
        static double Width(CorrectedReading corrected) => corrected.High - corrected.Low;
        Assert.True(Width(Of("white oak", 0.18, 20)) < Width(Of("white oak", 0.18, 0)));
        Assert.True(Width(Of("white oak", 0.18, 0)) < Width(Of("white oak", 0.18, -15)));
        Assert.True(Width(Of("white oak", 0.18, 20)) < Width(Of("white oak", 0.18, null)));
        Assert.True(Width(Of("white oak", 0.18, 20)) < Width(Of("post oak", 0.18, 20)));
        Assert.True(Width(Of("post oak", 0.18, 20)) < Width(Of("black cherry", 0.18, 20)));
    }

    [Theory]
    [InlineData(-5.0, PinPlace.FreshCore, "frozen")]
    [InlineData(null, PinPlace.FreshCore, "not known")]
    [InlineData(70.0, PinPlace.FreshCore, "hotter")]
    [InlineData(20.0, PinPlace.EndGrain, "End grain")]
    [InlineData(20.0, PinPlace.SplitFace, "wet skin")]
    public void Traps_are_told(double? celsius, PinPlace place, string word) =>
        Assert.Contains(PinCorrection.Of(new(0.18, ShownRange.Number, MeterScale.DouglasFir, celsius), Wood("white oak"), place).Notes, note => note.Contains(word, StringComparison.Ordinal));

    [Theory]
    [InlineData("douglas fir", "Douglas-fir")]
    [InlineData("shagbark hickory", "hickory")]
    [InlineData("Walnut, black", "black walnut")]
    [InlineData("black walnut", "black walnut")]
    [InlineData("3", null)]
    [InlineData("", null)]
    [InlineData("wallnut", null)]
    public void Scale_is_found_by_name_or_refused(string text, string? row)
    {
        var found = MeterScale.Find(text, "--scale");
        if (row is null) Assert.Contains("Douglas-fir is taken", Assert.Single(found.Problems).WhatToDo, StringComparison.Ordinal);
        else Assert.Equal(row, found.Value!.Name);
    }

    private static CorrectedReading Of(string wood, double shown, double? celsius) => PinCorrection.Of(new(shown, ShownRange.Number, MeterScale.DouglasFir, celsius), Wood(wood));

    private static Species Wood(string name) => SpeciesCatalogue.Find(name).Value!;
}
