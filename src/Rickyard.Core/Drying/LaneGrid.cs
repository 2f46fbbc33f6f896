using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// The grids of one or four pieces of equal layout (not equal size), interleaved for the kernels: value i of lane l sits at
/// i × <see cref="Lanes"/> + l, so that four members of an ensemble fill one vector and share every step's work.
/// </summary>
public sealed class LaneGrid
{
    /// <summary>Members that fill one vector of doubles.</summary>
    public const int FullLanes = 4;

    /// <summary>Anisotropy across the grain: radial and tangential over mean transverse diffusivity, D_R = 1.2 D_T (physics.md, D6).</summary>
    public const double RadialOverMean = 1.2 / 1.1, TangentialOverMean = 1 / 1.1;

    private readonly double[][] _conductance;

    /// <summary>Interleave one grid, or four of equal cell counts.</summary>
    public LaneGrid(params ReadOnlySpan<SplitGrid> grids)
    {
        if (grids.Length is not (1 or FullLanes)) throw new ArgumentException($"Give 1 or {FullLanes} grids, not {grids.Length}.", nameof(grids));
        Layout = grids[0];
        foreach (var grid in grids)
            if (!SameLayout(grid)) throw new ArgumentException("All grids need the same shape and cell counts.", nameof(grids));
        Lanes = grids.Length;
        Grids = grids.ToArray();
        Volumes = Interleave(grid => grid.Volumes);
        InverseVolumes = [.. Volumes.Select(v => 1 / v)];
        var polar = Layout.Split.IsPolar;
        _conductance =
        [
            Scaled(Interleave(grid => grid.RadialConductance), polar ? RadialOverMean : 1),
            Scaled(Interleave(grid => grid.TangentialConductance), polar ? TangentialOverMean : 1),
            Interleave(grid => grid.LongitudinalConductance),
        ];
        OuterCells = [.. Layout.OuterFaces.SelectMany(face => Enumerable.Range(0, Lanes).Select(lane => face.Cell * Lanes + lane))];
        OuterAreas = Interleave(grid => [.. grid.OuterFaces.Select(face => face.Area)]);
        OuterInverseDepths = Interleave(grid => [.. grid.OuterFaces.Select(face => Anisotropy(face.Normal, polar) / face.Depth)]);
    }

    private LaneGrid(LaneGrid from, double[] volumes, double[][] conductance)
    {
        (Layout, Grids, Lanes, Volumes, _conductance) = (from.Layout, from.Grids, from.Lanes, volumes, conductance);
        InverseVolumes = [.. volumes.Select(v => 1 / v)];
        (OuterCells, OuterAreas) = (from.OuterCells, from.OuterAreas);
        OuterInverseDepths = [.. from.Layout.OuterFaces.Select(face => 1 / face.Depth)];
    }

    /// <summary>The grid of the first lane; all lanes have its cell counts and faces.</summary>
    public SplitGrid Layout { get; }

    /// <summary>The grid of each lane.</summary>
    public IReadOnlyList<SplitGrid> Grids { get; }

    /// <summary>The same cells for heat: volumes times heat capacity stand for volumes, and across the grain all directions conduct alike. One lane only.</summary>
    /// <param name="capacity">Heat capacity of each cell per volume. [J m⁻³ K⁻¹]</param>
    internal LaneGrid ForHeat(double[] capacity) => Lanes == 1
        ? new(this, [.. Volumes.Select((volume, cell) => volume * capacity[cell])], [.. Enum.GetValues<Axis>().Select(Layout.Conductance)])
        : throw new InvalidOperationException("Heat is followed as a field in one split at a time.");

    /// <summary>1 or 4.</summary>
    public int Lanes { get; }

    /// <summary>Cells × lanes.</summary>
    public int Count => Volumes.Length;

    /// <summary>Cell volumes. [m³]</summary>
    public double[] Volumes { get; }

    /// <summary>One over the volumes. [m⁻³]</summary>
    public double[] InverseVolumes { get; }

    /// <summary>Interleaved number of the cell behind each outer face.</summary>
    public int[] OuterCells { get; }

    /// <summary>Outer face areas. [m²]</summary>
    public double[] OuterAreas { get; }

    /// <summary>Anisotropy over distance from face to cell centre. [m⁻¹]</summary>
    public double[] OuterInverseDepths { get; }

    /// <summary>Conductance to the next cell along an axis, anisotropy included; 0 after the last. [m]</summary>
    public double[] Conductance(Axis axis) => _conductance[(int)axis];

    /// <summary>The interleaved outer faces that look along an axis: first, and one past the last.</summary>
    public (int Start, int End) OuterRange(Axis axis)
    {
        var faces = Layout.OuterFaces;
        var start = Array.FindIndex(faces, face => face.Normal == axis);
        return start < 0 ? (0, 0) : (start * Lanes, (Array.FindLastIndex(faces, face => face.Normal == axis) + 1) * Lanes);
    }

    /// <summary>Distance between neighbours along an axis in the interleaved numbering.</summary>
    public int Stride(Axis axis) => Layout.Stride(axis) * Lanes;

    private static double Anisotropy(Axis normal, bool polar) => !polar ? 1 : normal switch
    {
        Axis.Radial => RadialOverMean,
        Axis.Tangential => TangentialOverMean,
        _ => 1,
    };

    private bool SameLayout(SplitGrid grid) => grid.Split.Shape == Layout.Split.Shape && grid.Split.Bark == Layout.Split.Bark
        && Enum.GetValues<Axis>().All(axis => grid.CountAlong(axis) == Layout.CountAlong(axis));

    private double[] Interleave(Func<SplitGrid, double[]> values)
    {
        var lanes = Grids.Select(values).ToArray();
        var mixed = new double[lanes[0].Length * Lanes];
        for (var i = 0; i < mixed.Length; i++) mixed[i] = lanes[i % Lanes][i / Lanes];
        return mixed;
    }

    private static double[] Scaled(double[] values, double factor) => [.. values.Select(v => v * factor)];
}
