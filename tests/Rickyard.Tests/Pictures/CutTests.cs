using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class CutTests
{
    [Theory]
    [InlineData(SplitShape.Wedge)]
    [InlineData(SplitShape.HalfRound)]
    [InlineData(SplitShape.Round)]
    [InlineData(SplitShape.InnerWedge)]
    [InlineData(SplitShape.Block)]
    public void Cut_across_has_the_area_of_the_section(SplitShape shape)
    {
        var split = Samples.All[shape].Case.Split;
        Assert.InRange(TriangleArea(Cut.Across(Even(split)).Mesh) / split.CrossSection, 0.997, 1.0001);
    }

    [Theory]
    [InlineData(SplitShape.Wedge, 1, 0)]
    [InlineData(SplitShape.HalfRound, 1, 0)]
    [InlineData(SplitShape.Round, 2, 0)]
    [InlineData(SplitShape.InnerWedge, 1, 1)]
    [InlineData(SplitShape.Block, 1, 0)]
    public void Cut_along_shows_the_whole_length_and_depth(SplitShape shape, double outers, double inners)
    {
        var split = Samples.All[shape].Case.Split;
        var extent = Cut.Along(Even(split)).Extent;
        Assert.Equal(split.Length, extent.Width, 9);
        Assert.Equal(outers * split.Outer - inners * split.Inner, extent.Height, 9);
    }

    [Theory]
    [InlineData(SplitShape.Wedge, 1)]
    [InlineData(SplitShape.Round, 2)]
    [InlineData(SplitShape.Block, 0)]
    public void Bark_lies_where_the_log_had_it(SplitShape shape, int sidesAlong)
    {
        var split = Samples.All[shape].Case.Split;
        Cut across = Cut.Across(Even(split)), along = Cut.Along(Even(split));
        Assert.Equal(sidesAlong, along.Bark.Count);
        Assert.Equal(Math.Min(sidesAlong, 1), across.Bark.Count);
        Assert.All(across.Bark.SelectMany(line => line), point => Assert.Equal(split.Outer, Math.Sqrt(point.X * point.X + point.Y * point.Y), 9));
    }

    [Theory]
    [InlineData(SplitShape.Wedge)]
    [InlineData(SplitShape.HalfRound)]
    [InlineData(SplitShape.Round)]
    [InlineData(SplitShape.InnerWedge)]
    [InlineData(SplitShape.Block)]
    public void Even_moisture_stays_even(SplitShape shape)
    {
        var snapshot = Even(Samples.All[shape].Case.Split);
        Assert.All(new[] { Cut.Across(snapshot), Cut.Along(snapshot) }, cut => Assert.Equal((0.25, 0.25), (Math.Round(cut.Mesh.Least, 12), Math.Round(cut.Mesh.Most, 12))));
    }

    [Fact]
    public void Contour_lies_at_the_depth_where_the_moisture_is()
    {
        // Moisture falls with the square of the radius, from 0.30 at the pith to 0.10 at the bark: it is 0.20 at 0.7071 of the radius.
        var split = Samples.All[SplitShape.Round].Case.Split;
        var contour = Assert.Single(LevelTracer.Contours(Cut.Across(Field(split, (r, _, _) => 0.30 - 0.20 * r * r / split.Outer / split.Outer)).Mesh, 0.20));
        Assert.All(contour, point => Assert.InRange(Math.Sqrt(point.X * point.X + point.Y * point.Y) / split.Outer, 0.695, 0.715));
    }

    [Fact]
    public void Cuts_are_their_own_mirror_image()
    {
        var snapshot = Samples.Wedge.Snapshots[2];
        Assert.All(new[] { Cut.Across(snapshot).Mesh, Cut.Along(snapshot).Mesh }, mesh =>
        {
            var byPlace = mesh.Points.Zip(mesh.Values).GroupBy(pair => (Math.Round(Math.Abs(pair.First.X), 9), Math.Round(pair.First.Y, 9)));
            Assert.All(byPlace.Where(group => group.Key.Item1 > 1e-6), group => Assert.Equal(group.First().Second, group.Last().Second, 9));
        });
    }

    private static FieldSnapshot Even(Split split) => Field(split, (_, _, _) => 0.25);

    private static FieldSnapshot Field(Split split, Func<double, double, double, double> moisture)
    {
        var grid = SplitGrid.For(split, new(12, 8, 8, 0.002, 1.7));
        var values = new double[grid.Count];
        for (var r = 0; r < grid.CountAlong(Axis.Radial); r++)
        for (var t = 0; t < grid.CountAlong(Axis.Tangential); t++)
        for (var z = 0; z < grid.CountAlong(Axis.Longitudinal); z++)
            values[grid.Index(r, t, z)] = moisture(Centre(grid.RadialEdges, r), Centre(grid.TangentialEdges, t), Centre(grid.LongitudinalEdges, z));
        return new(0, grid, values);
    }

    private static double Centre(double[] edges, int i) => (edges[i] + edges[i + 1]) / 2;

    private static double TriangleArea(FieldMesh mesh) => mesh.Triangles.Chunk(3).Sum(corners =>
    {
        Point a = mesh.Points[corners[0]], b = mesh.Points[corners[1]], c = mesh.Points[corners[2]];
        return Math.Abs((b.X - a.X) * (c.Y - a.Y) - (c.X - a.X) * (b.Y - a.Y)) / 2;
    });
}
