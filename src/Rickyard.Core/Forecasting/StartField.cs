using Rickyard.Core.Cases;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Forecasting;

/// <summary>
/// The moisture field at the start: the same throughout, or a profile that reads as the core, shell and end given. The profile is a constant, a parabola
/// of the depth under bare sides and an exponential of the depth under the ends, weighted so that the three probes read right (physics.md, G6).
/// </summary>
internal static class StartField
{
    /// <summary>Depth over which the ends' own profile fades: twice the pin depth.</summary>
    private const double EndFade = 2 * SplitProbes.PinDepth;

    /// <summary>Cell values. [kg kg⁻¹]</summary>
    internal static double[] Of(CaseStart start, SplitGrid grid)
    {
        if (start.Shell is null && start.End is null) return [.. Enumerable.Repeat(start.Core, grid.Count)];
        var shell = start.Shell ?? start.Core;
        return Profile(grid, start.Core, shell, start.End ?? shell);
    }

    private static double[] Profile(SplitGrid grid, double core, double shell, double end)
    {
        var probes = SplitProbes.Of(grid);
        double[] side = Shape(grid, p => Parabola(p, grid)), ends = Shape(grid, p => Math.Exp(-p.ToEnd / EndFade));
        double[][] read = [Row(probes.Core), Row(probes.Shell), Row(probes.End)];
        var weights = MathNet.Numerics.LinearAlgebra.Double.Matrix.Build.DenseOfRowArrays(read)
            .Solve(MathNet.Numerics.LinearAlgebra.Double.Vector.Build.DenseOfArray([core, shell, end]));
        return [.. Enumerable.Range(0, grid.Count).Select(cell => Math.Max(0, weights[0] + weights[1] * side[cell] + weights[2] * ends[cell]))];

        double[] Row(double[] probe) => [1, SplitProbes.Read(probe, side, 0, 1), SplitProbes.Read(probe, ends, 0, 1)];
    }

    private static double Parabola(ProbePoint point, SplitGrid grid)
    {
        var depth = Math.Min(1, point.ToSide / (grid.Split.Thickness / 2));
        return (1 - depth) * (1 - depth);
    }

    /// <summary>Cell averages of a function of the sample points.</summary>
    private static double[] Shape(SplitGrid grid, Func<ProbePoint, double> value)
    {
        var sums = new double[grid.Count];
        foreach (var point in SplitProbes.Sample(grid)) sums[point.Cell] += value(point) * point.Volume / grid.Volumes[point.Cell];
        return sums;
    }
}
