namespace Rickyard.Core.Splits;

/// <summary>
/// Where core, shell and end are in a grid, as weights over cells that add up to 1 (physics.md, G5): core is the inner tenth of the volume farthest from
/// any face, bark among them, shell the outer 6 mm under bare faces across the grain outside the end zone, end the outer 6 mm of end grain. A round has no bare side; its
/// shell is the outer 6 mm under the bark.
/// </summary>
public sealed class SplitProbes
{
    /// <summary>Depth of shell and end. [m]</summary>
    public const double PinDepth = 0.006;

    private const double CoreShare = 0.10;
    private const int PointsPerCell = 3;

    private SplitProbes(double[] mean, double[] core, double[] shell, double[] end) => (Mean, Core, Shell, End) = (mean, core, shell, end);

    /// <summary>Whole piece, by volume.</summary>
    public double[] Mean { get; }

    /// <summary>Inner tenth.</summary>
    public double[] Core { get; }

    /// <summary>Outer 6 mm under bare faces.</summary>
    public double[] Shell { get; }

    /// <summary>Outer 6 mm of end grain.</summary>
    public double[] End { get; }

    /// <summary>Find them by sampling each cell at 3 × 3 × 3 points.</summary>
    public static SplitProbes Of(SplitGrid grid)
    {
        var points = Sample(grid);
        return new(
            Weights(grid, points),
            Weights(grid, Innermost(points)),
            Weights(grid, points.Where(p => p.ToSide <= PinDepth && p.ToEnd > PinDepth)),
            Weights(grid, points.Where(p => p.ToEnd <= PinDepth)));
    }

    /// <summary>Weighted sum of interleaved cell values of one lane.</summary>
    public static double Read(double[] weights, ReadOnlySpan<double> state, int lane, int lanes)
    {
        double sum = 0;
        for (var cell = 0; cell < weights.Length; cell++) sum += weights[cell] * state[cell * lanes + lane];
        return sum;
    }

    internal static List<ProbePoint> Sample(SplitGrid grid)
    {
        List<ProbePoint> points = [];
        for (var i = 0; i < grid.CountAlong(Axis.Radial); i++)
        for (var j = 0; j < grid.CountAlong(Axis.Tangential); j++)
        for (var k = 0; k < grid.CountAlong(Axis.Longitudinal); k++)
            SampleCell(grid, i, j, k, points);
        return points;
    }

    private static void SampleCell(SplitGrid grid, int i, int j, int k, List<ProbePoint> points)
    {
        var cell = grid.Index(i, j, k);
        var volume = grid.Volumes[cell] / (PointsPerCell * PointsPerCell * PointsPerCell);
        for (var a = 0; a < PointsPerCell; a++)
        for (var b = 0; b < PointsPerCell; b++)
        {
            double first = Inside(grid.RadialEdges, i, a), second = Inside(grid.TangentialEdges, j, b), toSide = ToBareSide(grid.Split, first, second), toBark = grid.Split.Bark ? grid.Split.Outer - first : double.PositiveInfinity;
            for (var c = 0; c < PointsPerCell; c++) points.Add(new(cell, volume, toSide, toBark, grid.Split.Length / 2 - Inside(grid.LongitudinalEdges, k, c)));
        }
    }

    private static double Inside(double[] edges, int cell, int point) => edges[cell] + (edges[cell + 1] - edges[cell]) * (point + 0.5) / PointsPerCell;

    private static double ToBareSide(Split split, double first, double second)
    {
        if (split.Shape == SplitShape.Block) return Math.Min(split.Outer / 2 - first, split.Angle / 2 - second);
        var toBark = split.Outer - first;
        if (split.Shape == SplitShape.Round) return toBark;
        var toSplitFace = first * Math.Sin(Math.Min(split.Angle / 2 - second, Math.PI / 2));
        var nearest = split.Shape == SplitShape.InnerWedge ? Math.Min(toSplitFace, first - split.Inner) : toSplitFace;
        return split.Bark ? nearest : Math.Min(nearest, toBark);
    }

    private static IEnumerable<ProbePoint> Innermost(List<ProbePoint> points)
    {
        var sorted = points.ToArray();
        Array.Sort(Array.ConvertAll(sorted, point => -point.ToAnyFace), sorted);
        var wanted = CoreShare * points.Sum(point => point.Volume);
        return sorted.TakeWhile(point => (wanted -= point.Volume) > -point.Volume);
    }

    private static double[] Weights(SplitGrid grid, IEnumerable<ProbePoint> points)
    {
        var weights = new double[grid.Count];
        double total = 0;
        foreach (var point in points)
        {
            weights[point.Cell] += point.Volume;
            total += point.Volume;
        }

        for (var i = 0; i < weights.Length; i++) weights[i] /= total;
        return weights;
    }
}
