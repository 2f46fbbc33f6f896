using Rickyard.Core.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

public class LimitMeterTests
{
    [Fact]
    public void Short_stretches_go_to_their_longer_neighbour_and_no_day_is_lost()
    {
        var told = LimitMeter.Merged([Of(0, 0, 10, BoxLimit.Vapor), Of(0, 10, 10.2, BoxLimit.Surface), Of(0, 10.2, 40, BoxLimit.Inside), Of(1, 40, 41, BoxLimit.None)]);

        Assert.Equal([BoxLimit.Vapor, BoxLimit.Inside, BoxLimit.None], told.Select(limit => limit.Limit));
        Assert.Equal([(0, 10.0), (10, 40), (40, 41)], told.Select(limit => (limit.FromDay, limit.ToDay)));
    }

    [Fact]
    public void Heater_that_warms_the_box_up_is_told_however_short()
    {
        var told = LimitMeter.Merged([Of(0, 0, 0.2, BoxLimit.Heater), Of(0, 0.2, 20, BoxLimit.Inside)]);

        Assert.Equal([BoxLimit.Heater, BoxLimit.Inside], told.Select(limit => limit.Limit));
    }

    [Fact]
    public void Joined_stretches_weigh_their_shares_by_time()
    {
        var told = Assert.Single(LimitMeter.Merged([Of(0, 0, 3, BoxLimit.Inside, 0.4), Of(0, 3, 4, BoxLimit.Inside, 0.8)]));

        Assert.Equal(0.5, told.InsideShare, 12);
    }

    private static StageLimit Of(int stage, double from, double to, BoxLimit limit, double inside = 0.5) => new(stage, from, to, limit, 0, 0.2, 0.3, inside);
}
