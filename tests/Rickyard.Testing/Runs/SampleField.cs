using Rickyard.Core.Drying;
using Rickyard.Core.Splits;

namespace Rickyard.Testing.Runs;

/// <summary>A made-up moisture field: wet in the middle, dry under bare faces, the dry layer deepening with the root of time.</summary>
public static class SampleField
{
    // Said here, so that the pictures made from it do not change with the solver's own grid.
    private static readonly GridResolution Resolution = new(12, 8, 8, 0.002, 1.7);

    /// <summary>The field at a day.</summary>
    public static FieldSnapshot At(Split split, double day, double green, double dry)
    {
        var grid = SplitGrid.For(split, Resolution);
        var moisture = new double[grid.Count];
        for (var r = 0; r < grid.CountAlong(Axis.Radial); r++)
        for (var t = 0; t < grid.CountAlong(Axis.Tangential); t++)
        for (var z = 0; z < grid.CountAlong(Axis.Longitudinal); z++)
            moisture[grid.Index(r, t, z)] = dry + (green - dry) * Excess(split, day, Centre(grid.RadialEdges, r), Centre(grid.TangentialEdges, t), Centre(grid.LongitudinalEdges, z));
        return new(day, grid, moisture);
    }

    /// <summary>Mean of the piece.</summary>
    public static double Mean(FieldSnapshot field) => MeanOf(field, Enumerable.Range(0, field.Grid.Count));

    /// <summary>Wettest tenth of the volume.</summary>
    public static double Core(FieldSnapshot field)
    {
        var left = field.Grid.Volumes.Sum() / 10;
        return MeanOf(field, Enumerable.Range(0, field.Grid.Count).OrderByDescending(cell => field.Moisture[cell]).TakeWhile(cell => (left -= field.Grid.Volumes[cell]) > 0));
    }

    /// <summary>Cells under bare sides (under bark where there are none).</summary>
    public static double Shell(FieldSnapshot field)
    {
        var kind = field.Grid.OuterFaces.Any(face => face.Kind == FaceKind.Side) ? FaceKind.Side : FaceKind.Bark;
        return MeanOf(field, field.Grid.OuterFaces.Where(face => face.Kind == kind).Select(face => face.Cell).Distinct());
    }

    /// <summary>Cells under end grain.</summary>
    public static double End(FieldSnapshot field) => MeanOf(field, field.Grid.OuterFaces.Where(face => face.Kind == FaceKind.End).Select(face => face.Cell));

    private static double MeanOf(FieldSnapshot field, IEnumerable<int> cells)
    {
        double water = 0, volume = 0;
        foreach (var cell in cells)
        {
            water += field.Moisture[cell] * field.Grid.Volumes[cell];
            volume += field.Grid.Volumes[cell];
        }

        return water / volume;
    }

    private static double Excess(Split split, double day, double r, double t, double z)
    {
        var depth = 0.0032 * Math.Sqrt(day + 0.02);
        var across = split.Shape switch
        {
            SplitShape.Block => Open(split.Outer / 2 - r, depth) * Open(split.Angle / 2 - t, depth),
            SplitShape.Round => Open(split.Outer - r, depth / (split.Bark ? 8 : 1)),
            _ => Open(r * Math.Sin(Math.Min(Math.PI / 2, split.Angle / 2 - t)), depth) * Open(split.Outer - r, depth / (split.Bark ? 12 : 1)),
        };
        var inside = split.Shape == SplitShape.InnerWedge ? Open(r - split.Inner, depth) : 1;
        return day <= 0 ? 1 : across * inside * Open(split.Length / 2 - z, 1.6 * depth) * Math.Exp(-day / 260);
    }

    private static double Open(double distance, double depth) => Math.Tanh(distance / depth);

    private static double Centre(double[] edges, int i) => (edges[i] + edges[i + 1]) / 2;
}
