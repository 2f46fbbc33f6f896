using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>A split cut open once: the moisture on the flat cut in true shape, and where there is bark. Lengths in metre, bark of a wedge on top.</summary>
public sealed class Cut
{
    private const int RoundColumns = 72;

    private Cut(FieldMesh mesh, IReadOnlyList<IReadOnlyList<Point>> bark)
    {
        (Mesh, Bark) = (mesh, bark);
        Extent = Box.Round(mesh.Points);
    }

    /// <summary>Moisture on the cut. [kg kg⁻¹]</summary>
    public FieldMesh Mesh { get; }

    /// <summary>Lines of wood under bark. [m]</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Bark { get; }

    /// <summary>Room it takes. [m]</summary>
    public Box Extent { get; }

    /// <summary>Across the grain at mid-length.</summary>
    public static Cut Across(FieldSnapshot snapshot)
    {
        var grid = snapshot.Grid;
        var sheet = SmoothSheet.Over(grid.RadialEdges, IsWhole(grid.Split), grid.TangentialEdges, (r, t) => snapshot.Moisture[grid.Index(r, t, 0)]);
        return grid.Split.Shape switch
        {
            SplitShape.Block => Upright(sheet.MirroredRows().MirroredColumns(), (row, column) => new(row, column)),
            SplitShape.Round => Disc(sheet, grid.Split),
            _ => Sector(sheet.MirroredColumns(), grid.Split),
        };
    }

    /// <summary>Along the grain through the middle: through pith and the middle of the bark, or across a block's width.</summary>
    public static Cut Along(FieldSnapshot snapshot)
    {
        var grid = snapshot.Grid;
        var sheet = SmoothSheet.Over(grid.RadialEdges, IsWhole(grid.Split), grid.LongitudinalEdges, (r, z) => snapshot.Moisture[grid.Index(r, 0, z)]).MirroredColumns();
        if (IsWhole(grid.Split)) sheet = sheet.MirroredRows();
        return Upright(sheet, (row, column) => new(column, -row), grid.Split);
    }

    /// <summary>Whether the wood goes on beyond the grid's first row, mirrored there.</summary>
    private static bool IsWhole(Split split) => split.Shape is SplitShape.Round or SplitShape.Block;

    private static Cut Upright(SmoothSheet sheet, Func<double, double, Point> place, Split? barked = null)
    {
        var mesh = FieldMesh.Sheet(sheet.Values, (row, column) => place(sheet.Rows[row], sheet.Columns[column]), joined: false);
        return new(mesh, barked is { Bark: true } ? [.. BarkSides(barked)] : []);
    }

    private static IEnumerable<IReadOnlyList<Point>> BarkSides(Split split)
    {
        var half = split.Length / 2;
        yield return [new(-half, -split.Outer), new(half, -split.Outer)];
        if (split.Shape == SplitShape.Round) yield return [new(-half, split.Outer), new(half, split.Outer)];
    }

    private static Cut Sector(SmoothSheet sheet, Split split)
    {
        var mesh = FieldMesh.Sheet(sheet.Values, (row, column) => Polar(sheet.Rows[row], sheet.Columns[column]), joined: false);
        return new(mesh, split.Bark ? [[.. sheet.Columns.Select(angle => Polar(split.Outer, angle))]] : []);
    }

    private static Cut Disc(SmoothSheet sheet, Split split)
    {
        var rings = new double[sheet.Rows.Length, RoundColumns];
        for (var row = 0; row < sheet.Rows.Length; row++)
        for (var column = 0; column < RoundColumns; column++)
            rings[row, column] = sheet.Values[row, 0];
        var mesh = FieldMesh.Sheet(rings, (row, column) => Polar(sheet.Rows[row], 2 * Math.PI * column / RoundColumns), joined: true);
        var circle = Enumerable.Range(0, RoundColumns + 1).Select(column => Polar(split.Outer, 2 * Math.PI * column / RoundColumns));
        return new(mesh, split.Bark ? [[.. circle]] : []);
    }

    /// <summary>A place by radius and by angle from straight up.</summary>
    private static Point Polar(double radius, double angle) => new(radius * Math.Sin(angle), -radius * Math.Cos(angle));
}
