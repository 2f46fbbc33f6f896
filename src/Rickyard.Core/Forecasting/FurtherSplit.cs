using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Forecasting;

/// <summary>
/// Splitting a part-dry piece again: through the pith into equal openings, or a block across its width. The children are taken alike: at each depth under
/// the nearer new or old face stands the mean over the parent's cells that end up there, so that no water is made or lost (physics.md, G7).
/// </summary>
internal static class FurtherSplit
{
    /// <summary>Grids and fields of the typical child of each member.</summary>
    internal static (SplitGrid[] Grids, double[][] Fields) Apply(SplitGrid[] grids, double[][] fields, int into)
    {
        var children = grids.Select(grid => SplitGrid.For(Child(grid.Split, into))).ToArray();
        return (children, [.. children.Select((child, lane) => Map(grids[lane], fields[lane], child, into))]);
    }

    /// <summary>The size of one child.</summary>
    internal static Split Child(Split parent, int into)
    {
        static Length Metres(double value) => Length.FromMetres(value);
        var angle = parent.IsPolar ? Math.Min(parent.Angle / into, Math.PI) : 0;
        return parent.Shape switch
        {
            SplitShape.Block => Split.Block(Metres(parent.Outer / into), Metres(parent.Angle), Metres(parent.Length)),
            SplitShape.Round when into == 2 => Split.HalfRound(Metres(2 * parent.Outer), Metres(parent.Length), parent.Bark),
            SplitShape.InnerWedge => Split.InnerWedge(Metres(parent.Inner), Metres(parent.Outer), Angle.FromRadians(angle), Metres(parent.Length), parent.Bark),
            _ => Split.Wedge(Metres(parent.Outer), Angle.FromRadians(angle), Metres(parent.Length), parent.Bark),
        };
    }

    /// <summary>Carry a field over: radially and along the grain by overlap, across by folding the parent's width into the child's half width.</summary>
    internal static double[] Map(SplitGrid parent, ReadOnlySpan<double> field, SplitGrid child, int into)
    {
        var block = parent.Split.Shape == SplitShape.Block;
        var radial = block ? Folded(parent.RadialEdges, child.RadialEdges, into) : Overlap(parent.RadialEdges, child.RadialEdges, parent.Split.IsPolar);
        var tangential = parent.Split.Shape == SplitShape.Round ? Everywhere(child.TangentialEdges.Length - 1)
            : block ? Overlap(parent.TangentialEdges, child.TangentialEdges, false) : Folded(parent.TangentialEdges, child.TangentialEdges, into);
        var longitudinal = Overlap(parent.LongitudinalEdges, child.LongitudinalEdges, false);
        var values = new double[child.Count];
        for (var i = 0; i < radial.Length; i++)
        for (var j = 0; j < tangential.Length; j++)
        for (var k = 0; k < longitudinal.Length; k++)
            values[child.Index(i, j, k)] = Sum(parent, field, radial[i], tangential[j], longitudinal[k]);
        return values;
    }

    private static double Sum(SplitGrid parent, ReadOnlySpan<double> field, double[] radial, double[] tangential, double[] longitudinal)
    {
        double sum = 0;
        for (var i = 0; i < radial.Length; i++)
        for (var j = 0; j < tangential.Length; j++)
        for (var k = 0; k < longitudinal.Length; k++)
            if (radial[i] * tangential[j] * longitudinal[k] is var weight and > 0)
                sum += weight * field[parent.Index(i, j, k)];
        return sum;
    }

    /// <summary>For each child cell, the shares of parent cells in it; by area for radii.</summary>
    private static double[][] Overlap(double[] parent, double[] child, bool byArea) => [.. Enumerable.Range(0, child.Length - 1).Select(c =>
        Normalised([.. Enumerable.Range(0, parent.Length - 1).Select(p => Common(parent[p], parent[p + 1], child[c], child[c + 1], byArea))]))];

    /// <summary>The parent's whole width, cut into pieces each folded at its middle, gives the child's half width.</summary>
    private static double[][] Folded(double[] parentHalf, double[] childHalf, int into)
    {
        double half = parentHalf[^1], width = 2 * half / into;
        return [.. Enumerable.Range(0, childHalf.Length - 1).Select(c => Normalised([.. Enumerable.Range(0, parentHalf.Length - 1).Select(p =>
            Enumerable.Range(0, into).Sum(piece => Mirrored(parentHalf, p, -half + (piece + 0.5) * width, childHalf[c], childHalf[c + 1])))]))];
    }

    /// <summary>Overlap of a parent cell and its mirror image with a child cell and its mirror image about the child's middle.</summary>
    private static double Mirrored(double[] parent, int p, double middle, double low, double high)
    {
        double first = parent[p], last = parent[p + 1];
        return Common(first, last, middle + low, middle + high, false) + Common(first, last, middle - high, middle - low, false)
            + Common(-last, -first, middle + low, middle + high, false) + Common(-last, -first, middle - high, middle - low, false);
    }

    private static double Common(double a0, double a1, double b0, double b1, bool byArea)
    {
        double low = Math.Max(a0, b0), high = Math.Min(a1, b1);
        return high <= low ? 0 : byArea ? high * high - low * low : high - low;
    }

    private static double[] Normalised(double[] shares)
    {
        var total = shares.Sum();
        return [.. shares.Select(share => share / total)];
    }

    private static double[][] Everywhere(int count) => [.. Enumerable.Repeat(new double[] { 1 }, count)];
}
