using MathNet.Numerics.Interpolation;

namespace Rickyard.Web.Pictures.Field;

/// <summary>
/// Cell values of a flat cut as a smooth sheet: monotone cubics between cell centres (never above or below the cells they join). Between the
/// outermost centres and the edges, half a cell, the field goes on with the smaller of the two nearest slopes, or level across a plane of symmetry.
/// </summary>
public sealed class SmoothSheet
{
    private const int Steps = 28;

    private SmoothSheet(double[] rows, double[] columns, double[,] values) => (Rows, Columns, Values) = (rows, columns, values);

    /// <summary>Coordinates of the rows.</summary>
    public double[] Rows { get; }

    /// <summary>Coordinates of the columns.</summary>
    public double[] Columns { get; }

    /// <summary>Values by row and column.</summary>
    public double[,] Values { get; }

    /// <summary>The sheet over a grid of cells.</summary>
    /// <param name="rowEdges">Edges of the cells along the first coordinate.</param>
    /// <param name="mirrored">Whether the first edge along the first coordinate is a plane of symmetry.</param>
    /// <param name="columnEdges">Edges along the second, whose first edge always is one.</param>
    /// <param name="cell">Value of a cell by its two numbers.</param>
    public static SmoothSheet Over(double[] rowEdges, bool mirrored, double[] columnEdges, Func<int, int, double> cell)
    {
        double[] rowKnots = Knots(rowEdges), columnKnots = Knots(columnEdges);
        double[] rows = Refined(rowKnots), columns = Refined(columnKnots);
        var along = Enumerable.Range(0, rowEdges.Length - 1)
            .Select(row => Through(columnKnots, Enumerable.Range(0, columnEdges.Length - 1).Select(column => cell(row, column)), mirrored: true)).ToArray();
        var values = new double[rows.Length, columns.Length];
        for (var column = 0; column < columns.Length; column++)
        {
            var across = Through(rowKnots, along.Select(curve => curve.Interpolate(columns[column])), mirrored);
            for (var row = 0; row < rows.Length; row++) values[row, column] = across.Interpolate(rows[row]);
        }

        return new(rows, columns, values);
    }

    /// <summary>The same with its mirror image added across the first row.</summary>
    public SmoothSheet MirroredRows()
    {
        var values = new double[2 * Rows.Length - 1, Columns.Length];
        for (var row = 0; row < values.GetLength(0); row++)
        for (var column = 0; column < Columns.Length; column++)
            values[row, column] = Values[Math.Abs(row - (Rows.Length - 1)), column];
        return new(Mirrored(Rows), Columns, values);
    }

    /// <summary>The same with its mirror image added across the first column.</summary>
    public SmoothSheet MirroredColumns()
    {
        var values = new double[Rows.Length, 2 * Columns.Length - 1];
        for (var row = 0; row < Rows.Length; row++)
        for (var column = 0; column < values.GetLength(1); column++)
            values[row, column] = Values[row, Math.Abs(column - (Columns.Length - 1))];
        return new(Rows, Mirrored(Columns), values);
    }

    private static double[] Mirrored(double[] coordinates) => [.. coordinates.Skip(1).Reverse().Select(x => 2 * coordinates[0] - x), .. coordinates];

    /// <summary>Cell centres with the outer edges.</summary>
    private static double[] Knots(double[] edges) => [edges[0], .. edges.Zip(edges.Skip(1), (a, b) => (a + b) / 2), edges[^1]];

    private static double[] Refined(double[] knots)
    {
        var longest = (knots[^1] - knots[0]) / Steps;
        return [.. knots.Zip(knots.Skip(1), (a, b) => Between(a, b, (int)Math.Ceiling((b - a) / longest))).SelectMany(steps => steps), knots[^1]];
    }

    private static IEnumerable<double> Between(double start, double end, int count) => Enumerable.Range(0, count).Select(i => start + (end - start) * i / count);

    private static CubicSpline Through(double[] knots, IEnumerable<double> cells, bool mirrored)
    {
        double[] values = [.. cells];
        double[] middle = knots[1..^1];
        var end = Math.Max(0, values[^1] + (knots[^1] - middle[^1]) * LimitedSlope(middle, values, last: true));
        if (!mirrored)
        {
            var start = Math.Max(0, values[0] - (middle[0] - knots[0]) * LimitedSlope(middle, values, last: false));
            return CubicSpline.InterpolatePchipSorted(knots, [start, .. values, end]);
        }

        var plane = Math.Max(0, values[0] + AboveFirst(knots[0], middle, values));
        return CubicSpline.InterpolatePchipSorted([2 * knots[0] - middle[0], .. knots], [values[0], plane, .. values, end]);
    }

    /// <summary>Slope at one end: the smaller of the two nearest, none if they disagree, so that a steep front is not carried on.</summary>
    private static double LimitedSlope(double[] x, double[] y, bool last)
    {
        if (x.Length < 3) return 0;
        int i = last ? x.Length - 1 : 1, next = last ? i - 1 : i + 1;
        return Smaller((y[i] - y[i - 1]) / (x[i] - x[i - 1]), (y[next] - y[next - 1]) / (x[next] - x[next - 1]));
    }

    /// <summary>How far a parabola level on the plane of symmetry rises above the first cell's value; the flatter of the two that the first three cells give.</summary>
    private static double AboveFirst(double plane, double[] x, double[] y)
    {
        if (x.Length < 3) return 0;
        double first = Square(x[0] - plane), second = Square(x[1] - plane), third = Square(x[2] - plane);
        return first * Smaller((y[0] - y[1]) / (second - first), (y[1] - y[2]) / (third - second));
    }

    private static double Square(double x) => x * x;

    private static double Smaller(double a, double b) => a * b <= 0 ? 0 : Math.Abs(a) < Math.Abs(b) ? a : b;
}
