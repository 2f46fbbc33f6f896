using CsCheck;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Testing.Drying;
using Xunit;

namespace Rickyard.Core.Tests.Splits;

public sealed class SplitGridTests
{
    private static Length Metres(double value) => Length.FromMetres(value);

    [Fact]
    public void Every_cell_and_face_has_a_size_above_zero() => AnyPiece.OfAnyShape.Sample(split =>
    {
        var grid = SplitGrid.For(split);
        Assert.All(grid.Volumes, volume => Assert.True(volume > 0));
        Assert.All(grid.OuterFaces, face => Assert.True(face.Area > 0 && face.Depth > 0));
        foreach (var axis in Enum.GetValues<Axis>()) Assert.All(grid.Conductance(axis), conductance => Assert.True(conductance >= 0));
    });

    [Fact]
    public void Lines_of_cells_end_without_a_neighbour() => AnyPiece.OfAnyShape.Sample(split =>
    {
        var grid = SplitGrid.For(split);
        foreach (var axis in Enum.GetValues<Axis>())
        {
            int stride = grid.Stride(axis), count = grid.CountAlong(axis);
            for (var cell = 0; cell < grid.Count; cell++) Assert.Equal(cell / stride % count == count - 1, grid.Conductance(axis)[cell] == 0);
        }
    });

    // a needle of a wedge and a disc of a round: nothing divides by nothing
    [Fact]
    public void Very_thin_pieces_still_have_grids()
    {
        Split[] thin = [Split.Wedge(Metres(0.15), Angle.FromDegrees(0.5), Metres(0.4)), Split.Round(Metres(0.3), Metres(0.001)), Split.Block(Metres(0.0005), Metres(0.2), Metres(0.4))];
        foreach (var split in thin)
        {
            var grid = SplitGrid.For(split);
            Assert.Equal(split.Volume, grid.Copies * grid.Volumes.Sum(), 1e-12);
            Assert.All(grid.OuterFaces, face => Assert.True(double.IsFinite(1 / face.Depth)));
            foreach (var weights in (double[][])[SplitProbes.Of(grid).Core, SplitProbes.Of(grid).Mean]) Assert.Equal(1, weights.Sum(), 1e-12);
        }
    }

    [Fact]
    public void One_cell_is_a_grid()
    {
        var grid = SplitGrid.Uniform(Split.Block(Metres(0.1), Metres(0.08), Metres(0.4)), 1, 1, 1);
        Assert.Equal(1, grid.Count);
        Assert.Equal([0.025, 0.02, 0.1], grid.OuterFaces.Select(face => face.Depth));
        Assert.Equal(0.1 * 0.08 * 0.4, grid.Copies * grid.Volumes[0], 1e-12);
    }

    [Fact]
    public void Cells_under_bare_faces_are_thinnest_and_grow_steadily() => AnyPiece.Block.Sample(split =>
    {
        var edges = SplitGrid.For(split).LongitudinalEdges;
        var ratios = edges.Zip(edges.Skip(1), (a, b) => b - a).Reverse().ToArray() is var widths ? widths.Zip(widths.Skip(1), (thin, thick) => thick / thin).ToArray() : [];
        Assert.All(ratios, ratio => Assert.Equal(ratios[0], ratio, 1e-6));
        Assert.InRange(ratios[0], 1 - 1e-9, GridResolution.Default.Growth + 1e-9);
    });

    // the mean of x² over a cell from a to b is (a² + ab + b²)/3, of r² over a ring (a² + b²)/2; the slope at b is 2b
    [Fact]
    public void Parabolic_distance_gives_a_parabola_its_slope() => Gen.Select(Gen.Double[0, 1], Gen.Double[0.01, 1], Gen.Double[0, 1]).Sample((before, width, next) =>
    {
        double face = before + width, after = face + next;
        double flat = (Flat(face, after) - Flat(before, face)) / GridSpacing.ParabolicDistance(before, face, after, round: false);
        double round = (Ring(face, after) - Ring(before, face)) / GridSpacing.ParabolicDistance(before, face, after, round: true);
        Assert.Equal(2 * face, flat, 1e-9);
        Assert.Equal(2 * face, round, 1e-9);

        static double Flat(double a, double b) => (a * a + a * b + b * b) / 3;
        static double Ring(double a, double b) => (a * a + b * b) / 2;
    });
}
