using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>What holds a run back, in boxes made so that there is no doubt.</summary>
public sealed class BoxLimitTests(ITestOutputHelper output)
{
    [Fact]
    public void Vent_shut_to_next_to_nothing_with_much_green_wood_is_limited_by_vapor()
    {
        var box = SampleBox.Cabinet with { Vent = BoxVent.Shut, LeakOpening = 1e-4, WallConductance = 0.3 };
        Assert.Equal(BoxLimit.Vapor, Limit(SampleBox.Run(SampleBox.Plan(box, 60), [SampleBox.Class(0.06, 100, 0.8)], 7), 4));
    }

    [Fact]
    public void Feeble_heater_is_the_limit_and_tells_how_far_it_stays_below()
    {
        var box = SampleBox.Cabinet with { Heater = SampleBox.Cabinet.Heater with { Power = 100 } };
        var trace = SampleBox.Run(SampleBox.Plan(box, 70), [SampleBox.Class(0.06, 60)], 7);
        Assert.Equal(BoxLimit.Heater, Limit(trace, 4));
        Assert.Equal(70 - box.Heater.Band / 2 - trace.Series.AirCelsius.Skip(1).Average(), trace.Limits[0].Shortfall, 1.0);
    }

    [Fact]
    public void Thin_green_wood_in_still_air_is_first_limited_at_its_surface()
    {
        var box = SampleBox.Cabinet with { Vent = new(0.05, 0, null), Heater = SampleBox.Cabinet.Heater with { Power = 20000 }, Fan = new(0, 0, 0) };
        var trace = SampleBox.Run(SampleBox.Plan(box, 40), [SampleBox.Class(0.015, 20, 0.9, 40, "red maple")], 1, 24);
        Assert.Equal(BoxLimit.Surface, Limit(trace, 0.1));
    }

    [Fact]
    public void Thick_wood_is_late_limited_inside()
    {
        var box = SampleBox.Cabinet with { Vent = new(0.02, 0, null), Heater = SampleBox.Cabinet.Heater with { Power = 5000 } };
        Assert.Equal(BoxLimit.Inside, Limit(SampleBox.Run(SampleBox.Plan(box, 60), [SampleBox.Class(0.12, 15)], 14), 12));
    }

    [Fact]
    public void Closed_rest_is_limited_by_nothing() =>
        Assert.Equal(BoxLimit.None, Limit(SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet, 60, StageKind.ClosedRest), [SampleBox.Class(0.06, 20, celsius: 60)], 4), 3));

    private BoxLimit Limit(BoxTrace trace, double day)
    {
        foreach (var limit in trace.Limits) output.WriteLine(limit.ToString());
        return trace.Limits.First(limit => limit.ToDay >= day).Limit;
    }
}
