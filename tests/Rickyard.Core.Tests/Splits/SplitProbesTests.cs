using CsCheck;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Splits;

public sealed class SplitProbesTests
{
    [Fact]
    public void Weights_are_shares_that_add_to_one() => AnyPiece.OfAnyShape.Sample(
        split =>
        {
            var probes = SplitProbes.Of(SplitGrid.For(split));
            foreach (var weights in (double[][])[probes.Mean, probes.Core, probes.Shell, probes.End])
            {
                Assert.Equal(1, weights.Sum(), 1e-12);
                Assert.All(weights, weight => Assert.InRange(weight, 0, 1));
            }
        },
        iter: 50);

    [Fact]
    public void Core_is_a_tenth_of_the_volume_and_deeper_than_the_shell() => AnyPiece.OfAnyShape.Sample(
        split =>
        {
            var grid = SplitGrid.For(split);
            var points = SplitProbes.Sample(grid);
            var depths = new double[grid.Count];
            foreach (var point in points) depths[point.Cell] += point.ToAnyFace * point.Volume / grid.Volumes[point.Cell];
            var probes = SplitProbes.Of(grid);
            double core = SplitProbes.Read(probes.Core, depths, 0, 1), mean = SplitProbes.Read(probes.Mean, depths, 0, 1), end = SplitProbes.Read(probes.End, depths, 0, 1);
            Assert.True(core > mean && mean > end, $"core {core}, mean {mean}, end {end} of {split.Describe()}");
            Assert.True(core > SplitProbes.Read(probes.Shell, depths, 0, 1));
        },
        iter: 50);

    [Fact]
    public void A_field_of_one_value_reads_so_everywhere() => Gen.Select(AnyPiece.OfAnyShape, Gen.Double[0.05, 1]).Sample(
        (split, value) =>
        {
            var grid = SplitGrid.For(split);
            double[] field = [.. Enumerable.Repeat(value, grid.Count)];
            var probes = SplitProbes.Of(grid);
            Assert.All((double[][])[probes.Mean, probes.Core, probes.Shell, probes.End], weights => Assert.Equal(value, SplitProbes.Read(weights, field, 0, 1), 1e-12));
        },
        iter: 50);

    // sampled at 3 × 3 × 3 points a cell: pins of 6 mm, cells of 1.4 mm and up, so the depths are met to a third of a cell
    [Fact]
    public void Shell_lies_within_pin_depth_of_the_sides_of_a_block()
    {
        var grid = SplitGrid.For(Split.Block(Length.FromMetres(0.12), Length.FromMetres(0.1), Length.FromMetres(0.4)));
        var shell = SplitProbes.Of(grid).Shell;
        foreach (var point in SplitProbes.Sample(grid).Where(point => point.ToSide > 0.012)) Assert.Equal(0, shell[point.Cell]);
    }
}
