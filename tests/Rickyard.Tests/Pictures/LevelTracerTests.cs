using CsCheck;
using Rickyard.Web.Pictures.Field;
using Rickyard.Web.Pictures.Surface;
using Xunit;

namespace Rickyard.Tests.Pictures;

public sealed class LevelTracerTests
{
    private static readonly Gen<FieldMesh> Meshes =
        from rows in Gen.Int[2, 8]
        from columns in Gen.Int[3, 8]
        from values in Gen.Double[0, 1].Array[rows * columns]
        select Square(rows, columns, (row, column) => values[row * columns + column]);

    [Fact]
    public void Region_of_a_plane_ends_on_a_straight_line()
    {
        var mesh = Square(6, 9, (_, column) => column / 8.0);
        Assert.Equal(0.7, Area(LevelTracer.Region(mesh, 0.3)), 12);
        var contour = Assert.Single(LevelTracer.Contours(mesh, 0.3));
        Assert.All(contour, point => Assert.Equal(0.3, point.X, 12));
        Assert.Equal(1, contour.Max(point => point.Y) - contour.Min(point => point.Y), 12);
    }

    [Fact]
    public void Contour_of_a_hill_closes_round_it()
    {
        var mesh = Square(41, 41, (row, column) => 1 - Math.Pow(row / 20.0 - 1, 2) - Math.Pow(column / 20.0 - 1, 2));
        var contour = Assert.Single(LevelTracer.Contours(mesh, 0.36));
        Assert.Equal(contour[0], contour[^1]);
        Assert.All(contour, point => Assert.InRange(Math.Sqrt(Math.Pow(2 * point.X - 1, 2) + Math.Pow(2 * point.Y - 1, 2)), 0.79, 0.801));
    }

    [Fact]
    public void Region_below_all_values_is_the_whole_mesh() => Meshes.Sample(mesh => Math.Abs(Area(LevelTracer.Region(mesh, -1)) - 1) < 1e-12);

    [Fact]
    public void Region_above_all_values_is_empty() => Meshes.Sample(mesh => LevelTracer.Region(mesh, 2).Count == 0);

    [Fact]
    public void Region_and_what_it_leaves_out_make_the_whole() => Gen.Select(Meshes, Gen.Double[0.01, 0.99]).Sample((mesh, level) =>
    {
        var turned = FieldMesh.Sheet(Rows(mesh, value => -value), (row, column) => mesh.Points[row * Columns(mesh) + column], joined: false);
        return Math.Abs(Area(LevelTracer.Region(mesh, level)) + Area(LevelTracer.Region(turned, -level)) - 1) < 1e-9;
    });

    [Fact]
    public void Higher_level_never_has_more_area() => Gen.Select(Meshes, Gen.Double[0, 1].Array[2]).Sample((mesh, levels) =>
        Area(LevelTracer.Region(mesh, levels.Max())) <= Area(LevelTracer.Region(mesh, levels.Min())) + 1e-12);

    private static FieldMesh Square(int rows, int columns, Func<int, int, double> value)
    {
        var values = new double[rows, columns];
        for (var row = 0; row < rows; row++)
        for (var column = 0; column < columns; column++)
            values[row, column] = value(row, column);
        return FieldMesh.Sheet(values, (row, column) => new(column / (columns - 1.0), row / (rows - 1.0)), joined: false);
    }

    private static int Columns(FieldMesh mesh) => mesh.Points.Count(point => point.Y == 0);

    private static double[,] Rows(FieldMesh mesh, Func<double, double> change)
    {
        var columns = Columns(mesh);
        var rows = new double[mesh.Values.Length / columns, columns];
        for (var i = 0; i < mesh.Values.Length; i++) rows[i / columns, i % columns] = change(mesh.Values[i]);
        return rows;
    }

    /// <summary>Area inside the outlines; holes turn the other way and count against it.</summary>
    private static double Area(IEnumerable<IReadOnlyList<Point>> outlines) => Math.Abs(outlines.Sum(outline =>
        outline.Select((point, i) => (point, next: outline[(i + 1) % outline.Count])).Sum(pair => pair.point.X * pair.next.Y - pair.next.X * pair.point.Y) / 2));
}
