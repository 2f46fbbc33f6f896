using CsCheck;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;
using Rickyard.Testing.Cases;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Forecasting;

public sealed class FurtherSplitTests
{
    /// <summary>To rounding: shares of cells add up.</summary>
    [Fact]
    public void Water_of_the_parent_is_the_water_of_its_children() => Gen.Select(AnyPiece.OfAnyShape, Gen.Int[2, 6], Gen.Double[0.1, 1].Array[3]).Sample((piece, into, shape) =>
    {
        var parent = SplitGrid.For(piece);
        var field = Field(parent, shape);
        var (grids, fields) = FurtherSplit.Apply([parent], [field], into);
        var before = Water(parent, field) * parent.Copies;
        var after = Water(grids[0], fields[0]) * grids[0].Copies * into;
        return Math.Abs(after - before) < 1e-9 * before;
    }, iter: 60);

    [Fact]
    public void Finer_splits_are_dry_sooner_and_weigh_their_part()
    {
        SteadyPeriod room = new(null, 25, 0.4, null);
        var whole = PracticeCase.Through("northern red oak", 0.10, 0.7, [room], 60, 5).Typical;
        var split = PracticeCase.Through("northern red oak", 0.10, 0.7, [new SteadyPeriod(10, 25, 0.4, null), new SplitAgainPeriod(2), room], 60, 5).Typical;
        Assert.Equal(whole.Mean[1], split.Mean[1], 1e-9);
        Assert.True(split.Core[^1] < whole.Core[^1] - 0.02, $"{split.Core[^1]} against {whole.Core[^1]}");
        Assert.Equal(whole.MassKilograms[0] / 2, split.MassKilograms[^1] / (1 - split.LossFraction[^1]), 1e-6);
    }

    [Fact]
    public void Wood_at_rest_keeps_its_mean_and_evens_out()
    {
        var run = PracticeCase.Through("northern red oak", 0.08, 0.6, [new SteadyPeriod(4, 60, 0.2, 1), new RestPeriod(null, 60)], 20).Typical;
        var (begun, end) = (4, run.Mean.Length - 1);
        Assert.Equal(run.Mean[begun], run.Mean[end], 0.003);
        Assert.True(run.Core[end] - run.Shell[end] < 0.5 * (run.Core[begun] - run.Shell[begun]), $"gap {run.Core[end] - run.Shell[end]} after {run.Core[begun] - run.Shell[begun]}");
    }

    private static double[] Field(SplitGrid grid, double[] shape) => [.. SplitProbes.Sample(grid).GroupBy(point => point.Cell).OrderBy(cell => cell.Key)
        .Select(cell => shape[0] + shape[1] * cell.Average(point => point.ToSide) + shape[2] * cell.Average(point => point.ToEnd))];

    private static double Water(SplitGrid grid, double[] field) => field.Zip(grid.Volumes, (moisture, volume) => moisture * volume).Sum();
}
