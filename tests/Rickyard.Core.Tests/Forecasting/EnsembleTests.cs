using MathNet.Numerics.Statistics;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;
using Rickyard.Testing.Cases;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Forecasting;

public sealed class EnsembleTests
{
    [Fact]
    public void Draws_are_standard_normal_and_repeat_by_seed()
    {
        var draws = MemberDraw.Spread(256, 3);
        Assert.Equal(draws, MemberDraw.Spread(256, 3));
        Assert.NotEqual(draws, MemberDraw.Spread(256, 4));
        Assert.Equal(0, draws.Select(draw => draw.Rate).Mean(), 0.02);
        Assert.Equal(1, draws.Select(draw => draw.Rate).StandardDeviation(), 0.03);
        Assert.InRange(Correlation.Pearson(draws.Select(draw => draw.Rate), draws.Select(draw => draw.Size)), -0.2, 0.2);
    }

    [Fact]
    public void Run_repeated_gives_the_same_numbers()
    {
        SteadyPeriod room = new(null, 25, 0.4, null);
        var first = PracticeCase.Through("shagbark hickory", 0.09, 0.6, [room], 20, 5);
        var second = PracticeCase.Through("shagbark hickory", 0.09, 0.6, [room], 20, 5);
        Assert.Equal(first.Median.Core, second.Median.Core);
        Assert.Equal(first.Window, second.Window);
    }

    [Fact]
    public void Bands_lie_in_order_and_window_opens_before_it_closes()
    {
        var run = PracticeCase.Through("northern red oak", 0.07, 0.6, [new SteadyPeriod(null, 60, 0.2, 1)], 30, 0.5);
        for (var report = 0; report < run.Days.Length; report++)
            Assert.True(run.LowTenth.Core[report] <= run.Median.Core[report] && run.Median.Core[report] <= run.HighTenth.Core[report]);
        Assert.True(run.Window.From.Early <= run.Window.From.Middle && run.Window.From.Middle <= run.Window.Until.Middle);
        Assert.Equal(1, run.Window.ChanceReady);
    }

    /// <summary>The three probes read back what the case gave, for any piece big enough to have a core apart from its shell; the end to a point, as the edge where it meets the shell is held at nothing.</summary>
    [Fact]
    public void Start_of_core_shell_and_end_reads_as_given() => Assert.All(AnyPiece.OfAnyShape.Cases(25).Where(piece => piece.Thickness > 0.05), piece =>
    {
        var grid = SplitGrid.For(piece);
        var field = StartField.Of(new(0.40, 0.15, 0.12, false, 20, new(2026, 1, 1)), grid);
        var probes = SplitProbes.Of(grid);
        Assert.Equal(0.40, SplitProbes.Read(probes.Core, field, 0, 1), 0.005);
        Assert.Equal(0.15, SplitProbes.Read(probes.Shell, field, 0, 1), 0.005);
        Assert.Equal(0.12, SplitProbes.Read(probes.End, field, 0, 1), 0.012);
        Assert.All(field, moisture => Assert.InRange(moisture, 0, 1));
    });
}
