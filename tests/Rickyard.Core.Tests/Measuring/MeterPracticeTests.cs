using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Measuring;
using Rickyard.Testing.Cases;
using Xunit;

namespace Rickyard.Core.Tests.Measuring;

/// <summary>Pairs of readings the trade knows; common practice, no source, so the ranges are as wide as "about". What the pins feel; a meter's own ceiling and floor come on top.</summary>
public sealed class MeterPracticeTests
{
    /// <summary>Where a pin meter ends: "below range" (Wengert: 6 %). [kg kg⁻¹]</summary>
    private const double LeastShown = 0.06;

    /// <summary>"Part-seasoned in a rack: 12 % on the end, 37 to 43 % in a fresh core": five months from 1 March under a top. A meter only says "wet" there; the oven would say this.</summary>
    [Theory]
    [InlineData("white oak", 0.11)]
    [InlineData("northern red oak", 0.14)]
    public void Part_seasoned_wood_is_dry_at_the_end_and_wet_in_the_core(string species, double radius)
    {
        var cut = PracticeCase.OnRack(species, radius, "Seattle, Washington", new(2025, 3, 1), 150).Snapshots[^1];
        Assert.InRange(Feel(cut, PinPlace.EndGrain), 0.11, 0.135);
        Assert.InRange(Feel(cut, PinPlace.FreshCore), 0.37, 0.43);
    }

    /// <summary>"After two weeks at 70 °C one split shows below range outside and 5 % inside, a larger one 19 % inside": wedges of 55 and 110 mm from 60 %.</summary>
    [Fact]
    public void Two_weeks_at_seventy_degrees_leave_a_small_split_below_range_and_a_large_one_ready()
    {
        FieldSnapshot small = AfterBox(0.055), large = AfterBox(0.11);
        Assert.InRange(Feel(small, PinPlace.SplitFace), 0, LeastShown);
        Assert.InRange(Feel(small, PinPlace.EndGrain), 0, LeastShown);
        Assert.InRange(Feel(small, PinPlace.FreshCore), 0.04, 0.065);
        Assert.InRange(Feel(large, PinPlace.FreshCore), 0.17, 0.21);
    }

    /// <summary>"Rack-seasoned wood shows 17 outside and 20 inside": ten months in a moist place, read at the end of the year.</summary>
    [Theory]
    [InlineData("northern red oak")]
    [InlineData("shagbark hickory")]
    public void Rack_seasoned_wood_reads_some_points_higher_inside(string species)
    {
        var cut = PracticeCase.OnRack(species, 0.11, "Seattle, Washington", new(2025, 3, 1), 300).Snapshots[^1];
        Assert.InRange(Feel(cut, PinPlace.SplitFace), 0.16, 0.18);
        Assert.InRange(Feel(cut, PinPlace.FreshCore), 0.19, 0.22);
    }

    private static FieldSnapshot AfterBox(double radius) => PracticeCase.Through("northern red oak", radius, 0.60, [new SteadyPeriod(14, 70, 0.05, 1)], 14).Snapshots[^1];

    private static double Feel(FieldSnapshot cut, PinPlace place) => PinView.Of(cut.Grid, new(place)).Read(cut.Moisture);
}
