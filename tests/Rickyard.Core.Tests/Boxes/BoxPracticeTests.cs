using Rickyard.Core.Boxes;
using Rickyard.Testing.Boxes;
using Xunit;

namespace Rickyard.Core.Tests.Boxes;

/// <summary>What the trade says of a plain heated cabinet; common practice, no source, so the tolerances are as wide as its words.</summary>
public sealed class BoxPracticeTests(ITestOutputHelper output)
{
    /// <summary>"70 °C, two weeks: medium splits about 5 % in the core, the biggest about 19 % with a very dry shell; five days to a week would have suited the medium ones."</summary>
    [Fact]
    public void Two_weeks_at_seventy_degrees_overdry_medium_splits_and_leave_the_biggest_near_ready()
    {
        ChargeClass[] charge = [SampleBox.Class(0.05, 12), SampleBox.Class(0.06, 12), SampleBox.Class(0.11, 10)];
        var trace = SampleBox.Run(SampleBox.Plan(SampleBox.Cabinet with { WallConductance = 0.8 }, 70), charge, 14);
        for (var i = 0; i < charge.Length; i++)
        {
            var series = trace.Typical[i];
            output.WriteLine($"{charge[i].Name}: core {string.Join(" ", series.Core.Select(core => core.ToString("P0")))}, shell {series.Shell[^1]:P1}, mean {series.Mean[^1]:P1}, wood {series.CoreCelsius[^1]:0} °C, walls {trace.Series.WallCelsius[^1]:0}, air {trace.Series.AirCelsius[^1]:0}");
        }

        Assert.InRange(trace.Typical[0].Core[^1], 0.03, 0.07);
        Assert.InRange(trace.Typical[1].Core[^1], 0.03, 0.08);
        Assert.InRange(trace.Typical[2].Core[^1], 0.16, 0.22);
        Assert.InRange(trace.Typical[2].Shell[^1], 0.01, 0.06);
        Assert.InRange(trace.Typical[0].Core[5], 0.10, 0.20);
        Assert.InRange(trace.Typical[1].Core[7], 0.10, 0.20);
    }
}
