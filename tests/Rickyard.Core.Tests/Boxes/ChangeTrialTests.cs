using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Changes;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

public class ChangeTrialTests
{
    [Fact]
    public void A_vent_gains_more_where_the_air_is_full_than_where_it_is_not()
    {
        var shut = SampleBox.Cabinet with { Vent = new(0.0004, 0, null), LeakOpening = 0, WallConductance = 0.5 };
        double Of(BoxDescription box, ChargeClass[] charge) => Gains(box, 70, charge).Single(gain => gain.Change == BoxChange.LargerVent).TimeShare;

        double full = Of(shut, [SampleBox.Class(0.05, 120, 0.8)]), free = Of(SampleBox.Cabinet, [SampleBox.Class(0.1, 4, 0.3)]);
        Assert.True(full < free - 0.1, $"{full} of the time in full air, {free} in free air");
    }

    [Fact]
    public void Large_splits_in_good_air_gain_most_by_being_split_finer() =>
        Assert.Equal(BoxChange.FinerSplits, Gains(SampleBox.Cabinet, 70, [SampleBox.Class(0.14, 4, 0.4)])[0].Change);

    [Fact]
    public void A_setting_at_the_limit_is_not_made_warmer() =>
        Assert.DoesNotContain(Gains(SampleBox.Cabinet, 75, [SampleBox.Class(0.08, 10, 0.4)]), gain => gain.Change == BoxChange.Warmer);

    private static IReadOnlyList<ChangeGain> Gains(BoxDescription box, double celsius, ChargeClass[] charge) =>
        ChangeTrial.All(SampleBox.Plan(box, celsius), charge, OutsideSeries.Steady(15, 0.6), 5, 77, CancellationToken.None);
}
