using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>Where the conducting part of a needle runs through the grid of a piece, from its face to its tip.</summary>
internal sealed class PinPath
{
    /// <summary>Bare tip of an insulated pin; judgement, makers leave a few millimetres. [m]</summary>
    private const double BareTip = 0.005;

    private const int Tries = 200;

    private readonly SplitGrid _grid;
    private readonly Split _split;
    private readonly PinPlace _place;
    private readonly double _from, _to, _deepest;

    internal PinPath(SplitGrid grid, Pins pins)
    {
        (_grid, _split, _place) = (grid, grid.Split, pins.Place);
        (_from, _to) = (pins.Insulated ? Math.Max(0, pins.Depth - BareTip) : 0, pins.Depth);
        _deepest = Deepest(_split);
    }

    /// <summary>The cell at a part of the way, 0 at the face (or start of the bare tip) and 1 at the tip.</summary>
    internal int CellAt(double part)
    {
        var depth = _from + part * (_to - _from);
        var (first, second, along) = _split.Shape == SplitShape.Block ? InBlock(depth) : InLog(depth);
        return _grid.Index(Cell(_grid.RadialEdges, first), Cell(_grid.TangentialEdges, second), Cell(_grid.LongitudinalEdges, along));
    }

    /// <summary>Radius, angle from the plane of symmetry, distance from mid-length.</summary>
    private (double Radius, double Angle, double Along) InLog(double depth) => _place switch
    {
        PinPlace.EndGrain => (_deepest, 0, _split.Length / 2 - depth),
        PinPlace.FreshCore => (Far(_deepest, depth), Math.Atan2(depth, _deepest), 0),
        PinPlace.SplitFace when _split.Shape != SplitShape.Round => FromFace(depth),
        _ => (_split.Outer - depth, 0, 0),
    };

    /// <summary>Square to the split face, at the middle of its width.</summary>
    private (double Radius, double Angle, double Along) FromFace(double depth)
    {
        var at = (_split.Inner + _split.Outer) / 2;
        return (Far(at, depth), Math.Abs(_split.Angle / 2 - Math.Atan2(depth, at)), 0);
    }

    private (double Width, double Height, double Along) InBlock(double depth) => _place switch
    {
        PinPlace.EndGrain => (0, 0, _split.Length / 2 - depth),
        PinPlace.FreshCore => (0, depth, 0),
        PinPlace.SplitFace => (0, Math.Abs(_split.Angle / 2 - depth), 0),
        _ => (Math.Abs(_split.Outer / 2 - depth), 0, 0),
    };

    private static double Far(double a, double b) => Math.Sqrt(a * a + b * b);

    private static int Cell(double[] edges, double at)
    {
        var cell = 0;
        while (cell < edges.Length - 2 && at > edges[cell + 1]) cell++;
        return cell;
    }

    /// <summary>Radius, on the plane of symmetry, of the point farthest from every face across the grain. [m]</summary>
    private static double Deepest(Split split) => split.Shape is SplitShape.Block or SplitShape.Round ? 0 : Enumerable.Range(0, Tries + 1)
        .Select(i => split.Inner + (split.Outer - split.Inner) * i / Tries)
        .MaxBy(radius => Math.Min(
            Math.Min(split.Outer - radius, radius * Math.Sin(Math.Min(split.Angle / 2, Math.PI / 2))),
            split.Shape == SplitShape.InnerWedge ? radius - split.Inner : double.PositiveInfinity));
}
