using CsCheck;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Drying;

public sealed class TridiagonalLinesTests
{
    // same arithmetic in another order on diagonally dominant rows: rounding only
    [Fact]
    public void All_lines_at_once_agree_with_one_at_a_time() => Gen.Select(
        AnyPiece.OfAnyShape, Gen.Int[1, 5], Gen.Int[1, 5], Gen.Int[1, 5], Gen.Bool, Gen.Double[-3, 9], Gen.Int[0, int.MaxValue])
        .Sample((split, radial, tangential, longitudinal, four, logStep, seed) =>
        {
            var grid = SplitGrid.Uniform(split, radial, tangential, longitudinal);
            var lanes = four ? new LaneGrid(grid, grid, grid, grid) : new LaneGrid(grid);
            var law = new LinearLaw(lanes, 1e-10, 0, _ => 1e-8);
            var random = new Random(seed);
            double[] right = [.. Enumerable.Range(0, lanes.Count).Select(_ => random.NextDouble() - 0.5)], slopes = new double[lanes.OuterCells.Length];
            law.OuterFluxes(right, new double[slopes.Length], slopes);
            foreach (var axis in Enum.GetValues<Axis>()) Agree(lanes, law, axis, right, slopes, Math.Pow(10, logStep));
        });

    private static void Agree(LaneGrid lanes, LinearLaw law, Axis axis, double[] right, double[] slopes, double g)
    {
        double[] fast = [.. right], next = new double[lanes.Count], own = new double[lanes.Count];
        var lines = new TridiagonalLines(lanes, axis);
        lines.SetJacobian(law, right, lanes, slopes);
        lines.Factor(g);
        lines.Solve(fast);
        law.FaceSlopes(axis, right, next, own);
        int stride = lanes.Stride(axis), length = lanes.Layout.CountAlong(axis);
        for (var first = 0; first < lanes.Count; first++)
        {
            if (first / stride % length != 0) continue;
            int[] cells = [.. Enumerable.Range(0, length).Select(i => first + i * stride)];
            double Leaving(int cell) => Enumerable.Range(lines.Start, lines.End - lines.Start).Where(k => lanes.OuterCells[k] == cell).Sum(k => slopes[k]);
            var plain = PlainLines.Solve(
                [.. cells.Select((cell, i) => i == 0 ? 0 : -g * own[cell - stride] / lanes.Volumes[cell])],
                [.. cells.Select((cell, i) => 1 + g * (own[cell] + (i == 0 ? 0 : next[cell - stride]) + Leaving(cell)) / lanes.Volumes[cell])],
                [.. cells.Select(cell => -g * next[cell] / lanes.Volumes[cell])],
                [.. cells.Select(cell => right[cell])]);
            for (var i = 0; i < length; i++) Assert.Equal(plain[i], fast[cells[i]], 1e-10 * (Math.Abs(plain[i]) + plain.Max(Math.Abs)));
        }
    }
}
