using MathNet.Numerics.Interpolation;

namespace Rickyard.Web.Pictures.Field;

/// <summary>
/// Cell values of a flat cut as a smooth sheet: monotone cubics between cell centres (never above or below the cells they join), held level from
/// the outermost centres to the edges.
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
    /// <param name="columnEdges">Edges along the second.</param>
    /// <param name="cell">Value of a cell by its two numbers.</param>
    public static SmoothSheet Over(double[] rowEdges, double[] columnEdges, Func<int, int, double> cell)
    {
        double[] rowKnots = Knots(rowEdges), columnKnots = Knots(columnEdges);
        double[] rows = Refined(rowKnots), columns = Refined(columnKnots);
        var along = Enumerable.Range(0, rowEdges.Length - 1)
            .Select(row => Through(columnKnots, Enumerable.Range(0, columnEdges.Length - 1).Select(column => cell(row, column)))).ToArray();
        var values = new double[rows.Length, columns.Length];
        for (var column = 0; column < columns.Length; column++)
        {
            var across = Through(rowKnots, along.Select(curve => curve.Interpolate(columns[column])));
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

    private static double[] Knots(double[] edges) => [edges[0], .. edges.Zip(edges.Skip(1), (a, b) => (a + b) / 2), edges[^1]];

    private static double[] Refined(double[] knots)
    {
        var longest = (knots[^1] - knots[0]) / Steps;
        return [.. knots.Zip(knots.Skip(1), (a, b) => Between(a, b, (int)Math.Ceiling((b - a) / longest))).SelectMany(steps => steps), knots[^1]];
    }

    private static IEnumerable<double> Between(double start, double end, int count) => Enumerable.Range(0, count).Select(i => start + (end - start) * i / count);

    private static CubicSpline Through(double[] knots, IEnumerable<double> cells)
    {
        double[] values = [.. cells];
        return CubicSpline.InterpolatePchipSorted(knots, [values[0], .. values, values[^1]]);
    }
}
