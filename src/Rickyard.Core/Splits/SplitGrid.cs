namespace Rickyard.Core.Splits;

/// <summary>
/// Finite volumes of one split in the log's own axes (r, θ, z), or (x, y, z) of a block: plain arrays of volumes, face conductances
/// and outer faces, so that one kernel serves all shapes (physics.md, section G). Symmetry is used: half the length is solved, half the
/// angle of a wedge, a quarter of a block's section; <see cref="Copies"/> says how often the solved part occurs in the piece.
/// Cells are numbered (radial × tangential count + tangential) × longitudinal count + longitudinal.
/// </summary>
public sealed class SplitGrid
{
    private readonly bool _fitted;

    private SplitGrid(Split split, double[] radial, double[] tangential, double[] longitudinal, bool fitted)
    {
        _fitted = fitted;
        (Split, RadialEdges, TangentialEdges, LongitudinalEdges) = (split, radial, tangential, longitudinal);
        Volumes = new double[Count];
        RadialConductance = new double[Count];
        TangentialConductance = new double[Count];
        LongitudinalConductance = new double[Count];
        FillCells();
        OuterFaces = [.. FindOuterFaces()];
    }

    /// <summary>The piece this is a grid of.</summary>
    public Split Split { get; }

    /// <summary>Cell edges from pith to bark (or over half a block's width). [m]</summary>
    public double[] RadialEdges { get; }

    /// <summary>Cell edges from the plane of symmetry to the split face: [rad], or [m] over half a block's height.</summary>
    public double[] TangentialEdges { get; }

    /// <summary>Cell edges from mid-length to the end. [m]</summary>
    public double[] LongitudinalEdges { get; }

    /// <summary>Number of cells along an axis.</summary>
    public int CountAlong(Axis axis) => Edges(axis).Length - 1;

    /// <summary>Distance in the cell numbering between neighbours along an axis.</summary>
    public int Stride(Axis axis) => axis switch
    {
        Axis.Radial => CountAlong(Axis.Tangential) * CountAlong(Axis.Longitudinal),
        Axis.Tangential => CountAlong(Axis.Longitudinal),
        _ => 1,
    };

    /// <summary>Number of cells.</summary>
    public int Count => CountAlong(Axis.Radial) * CountAlong(Axis.Tangential) * CountAlong(Axis.Longitudinal);

    /// <summary>How many mirror images of the solved part make the piece: 4 for a wedge, 2 for a round, 8 for a block.</summary>
    public int Copies => Split.Shape switch { SplitShape.Round => 2, SplitShape.Block => 8, _ => 4 };

    /// <summary>Volume of each cell. [m³]</summary>
    public double[] Volumes { get; }

    /// <summary>Face area over distance, from each cell to the next one along r (0 after the last). [m]</summary>
    public double[] RadialConductance { get; }

    /// <summary>The same along θ. [m]</summary>
    public double[] TangentialConductance { get; }

    /// <summary>The same along z. [m]</summary>
    public double[] LongitudinalConductance { get; }

    /// <summary>Faces between cells and air.</summary>
    public OuterFace[] OuterFaces { get; }

    /// <summary>Conductances along an axis. [m]</summary>
    public double[] Conductance(Axis axis) => axis switch
    {
        Axis.Radial => RadialConductance,
        Axis.Tangential => TangentialConductance,
        _ => LongitudinalConductance,
    };

    /// <summary>
    /// The default grid: cells thin under bare faces, growing inward by at most <see cref="GridResolution.Growth"/>, with distances that make coarse cells
    /// exact in steady drying (<see cref="GridSpacing.ParabolicDistance"/>).
    /// </summary>
    public static SplitGrid For(Split split, GridResolution? resolution = null)
    {
        var r = resolution ?? GridResolution.Default;
        var inner = split.Shape == SplitShape.InnerWedge;
        var radial = split.IsPolar
            ? GridSpacing.Between(split.Inner, split.Outer, r.Radial, fineAtStart: inner, fineAtEnd: !split.Bark, r.SkinMetres, r.Growth)
            : GridSpacing.Between(0, split.Outer / 2, r.Radial, false, true, r.SkinMetres, r.Growth);
        var arm = (split.Inner + 2 * split.Outer) / 3;
        var tangential = split.Shape switch
        {
            SplitShape.Round => [0, split.Angle],
            SplitShape.Block => GridSpacing.Between(0, split.Angle / 2, r.Radial, false, true, r.SkinMetres, r.Growth),
            _ => GridSpacing.Between(0, split.Angle / 2, r.Tangential, false, true, r.SkinMetres / arm, r.Growth),
        };
        return new(split, radial, tangential, GridSpacing.Between(0, split.Length / 2, r.Longitudinal, false, true, r.SkinMetres, r.Growth), fitted: true);
    }

    /// <summary>A grid of equal steps in each coordinate, plain distances between centres, for convergence studies and comparisons.</summary>
    public static SplitGrid Uniform(Split split, int radial, int tangential, int longitudinal) => new(
        split,
        split.IsPolar ? GridSpacing.Equal(split.Inner, split.Outer, radial) : GridSpacing.Equal(0, split.Outer / 2, radial),
        split.Shape == SplitShape.Round ? [0, split.Angle] : GridSpacing.Equal(0, split.Angle / 2, tangential),
        GridSpacing.Equal(0, split.Length / 2, longitudinal),
        fitted: false);

    /// <summary>Number of a cell.</summary>
    public int Index(int radial, int tangential, int longitudinal) =>
        (radial * CountAlong(Axis.Tangential) + tangential) * CountAlong(Axis.Longitudinal) + longitudinal;

    private double[] Edges(Axis axis) => axis switch
    {
        Axis.Radial => RadialEdges,
        Axis.Tangential => TangentialEdges,
        _ => LongitudinalEdges,
    };

    private void FillCells()
    {
        for (var i = 0; i < CountAlong(Axis.Radial); i++)
        for (var j = 0; j < CountAlong(Axis.Tangential); j++)
        for (var k = 0; k < CountAlong(Axis.Longitudinal); k++)
            FillCell(i, j, k, Index(i, j, k));
    }

    private void FillCell(int i, int j, int k, int cell)
    {
        double dz = Width(LongitudinalEdges, k), section = Section(i, j);
        Volumes[cell] = section * dz;
        if (i + 1 < CountAlong(Axis.Radial)) RadialConductance[cell] = RadialFace(i + 1, j) * dz / Distance(Axis.Radial, i, i + 2);
        if (j + 1 < CountAlong(Axis.Tangential)) TangentialConductance[cell] = Width(RadialEdges, i) * dz / (Arm(i) * Distance(Axis.Tangential, j, j + 2));
        if (k + 1 < CountAlong(Axis.Longitudinal)) LongitudinalConductance[cell] = section / Distance(Axis.Longitudinal, k, k + 2);
    }

    private IEnumerable<OuterFace> FindOuterFaces()
    {
        int nr = CountAlong(Axis.Radial), nt = CountAlong(Axis.Tangential), nz = CountAlong(Axis.Longitudinal);
        for (var j = 0; j < nt; j++)
        for (var k = 0; k < nz; k++)
            yield return new(Index(nr - 1, j, k), Split.Bark ? FaceKind.Bark : FaceKind.Side, Axis.Radial,
                RadialFace(nr, j) * Width(LongitudinalEdges, k), Distance(Axis.Radial, nr - 1, nr));
        if (Split.Shape == SplitShape.InnerWedge)
            for (var j = 0; j < nt; j++)
            for (var k = 0; k < nz; k++)
                yield return new(Index(0, j, k), FaceKind.Side, Axis.Radial, RadialFace(0, j) * Width(LongitudinalEdges, k), Width(RadialEdges, 0) / 2);
        if (Split.Shape != SplitShape.Round)
            for (var i = 0; i < nr; i++)
            for (var k = 0; k < nz; k++)
                yield return new(Index(i, nt - 1, k), FaceKind.Side, Axis.Tangential,
                    Width(RadialEdges, i) * Width(LongitudinalEdges, k), Arm(i) * Distance(Axis.Tangential, nt - 1, nt));
        for (var i = 0; i < nr; i++)
        for (var j = 0; j < nt; j++)
            yield return new(Index(i, j, nz - 1), FaceKind.End, Axis.Longitudinal, Section(i, j), Distance(Axis.Longitudinal, nz - 1, nz));
    }

    private double Section(int i, int j) => Width(TangentialEdges, j) * Width(RadialEdges, i) * Arm(i);

    private double RadialFace(int edge, int j) => Width(TangentialEdges, j) * (Split.IsPolar ? RadialEdges[edge] : 1);

    /// <summary>Mean radius of a ring of cells, which turns angles into lengths; 1 in a block.</summary>
    private double Arm(int i) => Split.IsPolar ? (RadialEdges[i] + RadialEdges[i + 1]) / 2 : 1;

    private static double Width(double[] edges, int i) => edges[i + 1] - edges[i];

    /// <summary>From the middle of a cell to that of the next one, or to the face that ends it.</summary>
    /// <param name="axis">Along it.</param>
    /// <param name="first">Edge where the cell begins.</param>
    /// <param name="last">Edge where the next cell ends, or the outer face.</param>
    private double Distance(Axis axis, int first, int last)
    {
        var edges = Edges(axis);
        var round = axis == Axis.Radial && Split.IsPolar;
        return !_fitted || (round && Split.Shape == SplitShape.InnerWedge)
            ? (edges[last] - edges[first]) / 2
            : GridSpacing.ParabolicDistance(edges[first], edges[first + 1], edges[last], round);
    }
}
