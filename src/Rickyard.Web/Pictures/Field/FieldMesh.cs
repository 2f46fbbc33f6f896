using Rickyard.Web.Pictures.Surface;

namespace Rickyard.Web.Pictures.Field;

/// <summary>A field over a flat piece of wood: values at points joined by triangles, linear in between.</summary>
public sealed class FieldMesh
{
    private FieldMesh(Point[] points, double[] values, int[] triangles)
    {
        (Points, Values, Triangles) = (points, values, triangles);
        (Least, Most) = (values.Min(), values.Max());
        Rim = FindRim(triangles);
    }

    /// <summary>Places. [m]</summary>
    public Point[] Points { get; }

    /// <summary>Value at each.</summary>
    public double[] Values { get; }

    /// <summary>Three points each, all turning the same way.</summary>
    public int[] Triangles { get; }

    /// <summary>Edges of triangles that no other triangle shares, in the triangles' turn.</summary>
    public IReadOnlyList<(int From, int To)> Rim { get; }

    /// <summary>Least value.</summary>
    public double Least { get; }

    /// <summary>Largest value.</summary>
    public double Most { get; }

    /// <summary>A sheet of rows and columns of points.</summary>
    /// <param name="values">Values by row and column.</param>
    /// <param name="place">Place of a row and column. [m]</param>
    /// <param name="joined">Whether the last column lies beside the first, as round a disc.</param>
    public static FieldMesh Sheet(double[,] values, Func<int, int, Point> place, bool joined)
    {
        int rows = values.GetLength(0), columns = values.GetLength(1);
        var points = new Point[rows * columns];
        var flat = new double[rows * columns];
        for (var row = 0; row < rows; row++)
        for (var column = 0; column < columns; column++)
            (points[row * columns + column], flat[row * columns + column]) = (place(row, column), values[row, column]);
        return new(points, flat, Triangulate(rows, columns, joined));
    }

    private static int[] Triangulate(int rows, int columns, bool joined)
    {
        var triangles = new List<int>();
        for (var row = 0; row + 1 < rows; row++)
        for (var column = 0; column < (joined ? columns : columns - 1); column++)
        {
            int next = (column + 1) % columns, below = (row + 1) * columns, above = row * columns;
            triangles.AddRange([above + column, below + column, below + next, above + column, below + next, above + next]);
        }

        return [.. triangles];
    }

    private static List<(int From, int To)> FindRim(int[] triangles)
    {
        var open = new HashSet<(int From, int To)>();
        for (var corner = 0; corner < triangles.Length; corner++)
        {
            var edge = (From: triangles[corner], To: triangles[corner % 3 == 2 ? corner - 2 : corner + 1]);
            if (!open.Remove((edge.To, edge.From))) open.Add(edge);
        }

        return [.. open.Order()];
    }
}
