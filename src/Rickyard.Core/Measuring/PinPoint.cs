using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>A place on the way of a pin, in the coordinates of the grid.</summary>
/// <param name="Radial">From the pith, or from the middle of a block's width. [m]</param>
/// <param name="Tangential">From the plane of symmetry: [rad], or [m] from the middle of a block's height.</param>
/// <param name="Longitudinal">From mid-length. [m]</param>
internal readonly record struct PinPoint(double Radial, double Tangential, double Longitudinal)
{
    /// <summary>The cells about it with their shares, which add up to 1: linear between middles of cells, level from the outermost middle to the face.</summary>
    internal IEnumerable<(int Cell, double Share)> Cells(SplitGrid grid)
    {
        foreach (var (i, first) in Between(grid.RadialEdges, Radial))
        foreach (var (j, second) in Between(grid.TangentialEdges, Tangential))
        foreach (var (k, third) in Between(grid.LongitudinalEdges, Longitudinal))
            yield return (grid.Index(i, j, k), first * second * third);
    }

    private static (int Cell, double Share)[] Between(double[] edges, double place)
    {
        var after = 0;
        while (after < edges.Length - 1 && Middle(edges, after) <= place) after++;
        if (after == 0 || after == edges.Length - 1) return [(Math.Max(0, after - 1), 1)];
        double low = Middle(edges, after - 1), share = (place - low) / (Middle(edges, after) - low);
        return [(after - 1, 1 - share), (after, share)];
    }

    private static double Middle(double[] edges, int cell) => (edges[cell] + edges[cell + 1]) / 2;
}
