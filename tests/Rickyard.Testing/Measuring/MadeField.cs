using Rickyard.Core.Splits;

namespace Rickyard.Testing.Measuring;

/// <summary>Fields written down rather than solved.</summary>
public static class MadeField
{
    /// <summary>A value at the middle of every cell: by the first, second and third coordinate of the grid.</summary>
    public static double[] AtMiddles(SplitGrid grid, Func<double, double, double, double> value)
    {
        var field = new double[grid.Count];
        for (var i = 0; i < grid.CountAlong(Axis.Radial); i++)
        for (var j = 0; j < grid.CountAlong(Axis.Tangential); j++)
        for (var k = 0; k < grid.CountAlong(Axis.Longitudinal); k++)
            field[grid.Index(i, j, k)] = value(Middle(grid.RadialEdges, i), Middle(grid.TangentialEdges, j), Middle(grid.LongitudinalEdges, k));
        return field;
    }

    /// <summary>A value by depth under the nearest face, bark among them, averaged over each cell.</summary>
    public static double[] ByDepth(SplitGrid grid, Func<double, double> value)
    {
        var field = new double[grid.Count];
        foreach (var point in SplitProbes.Sample(grid)) field[point.Cell] += value(point.ToAnyFace) * point.Volume / grid.Volumes[point.Cell];
        return field;
    }

    private static double Middle(double[] edges, int cell) => (edges[cell] + edges[cell + 1]) / 2;
}
