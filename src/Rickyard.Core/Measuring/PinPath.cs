using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>
/// Where the points of a pin are that touch wood (physics.md, V2). A way that is longer than the piece is thick is folded back at a plane of symmetry and
/// held at an outer face.
/// </summary>
internal static class PinPath
{
    /// <summary>Bare length at the tip of an insulated pin; judgement. [m]</summary>
    internal const double BareTip = 0.005;

    private const double Step = 0.0005;
    private const int LeastPoints = 8, MostPoints = 80;

    /// <summary>Points evenly spread over the bare length.</summary>
    internal static IEnumerable<PinPoint> Of(Split split, Pins pins)
    {
        var start = pins.Insulated ? Math.Max(0, pins.Depth - BareTip) : 0;
        var count = (int)Math.Clamp((pins.Depth - start) / Step, LeastPoints, MostPoints);
        return Enumerable.Range(0, count).Select(point => At(split, pins.Place, start + (pins.Depth - start) * (point + 0.5) / count));
    }

    private static PinPoint At(Split split, PinPlace place, double depth) => place switch
    {
        PinPlace.EndGrain => new(MiddleOfSection(split), 0, Math.Abs(split.Length / 2 - depth)),
        PinPlace.FreshCore => FromCore(split, depth),
        PinPlace.Side when split.IsPolar => FromBark(split, depth),
        _ => FromSplitFace(split, depth),
    };

    /// <summary>Centre of gravity of a sector; pith of a round, middle of a block.</summary>
    private static double MiddleOfSection(Split split)
    {
        if (split.Shape is SplitShape.Round or SplitShape.Block) return 0;
        double half = split.Angle / 2, inner = split.Inner, outer = split.Outer;
        return 2.0 / 3 * (outer * outer + outer * inner + inner * inner) / (outer + inner) * Math.Sin(half) / half;
    }

    private static PinPoint FromBark(Split split, double depth) => new(Math.Max(split.Inner, Math.Abs(split.Outer - depth)), 0, 0);

    /// <summary>A straight way square to the split face; in a block through its wide face; in a round, which has none, through the bark.</summary>
    private static PinPoint FromSplitFace(Split split, double depth)
    {
        if (split.Shape == SplitShape.Round) return FromBark(split, depth);
        if (!split.IsPolar) return Across(split, longWay: false, Math.Min(split.Outer, split.Angle) / 2 - depth);
        var middle = (split.Inner + split.Outer) / 2;
        return new(Math.Min(split.Outer, double.Hypot(middle, depth)), Math.Abs(split.Angle / 2 - Math.Atan2(depth, middle)), 0);
    }

    /// <summary>The piece is halved by its plane of symmetry (a block across its longer side); the pins go square into the new face where it is farthest from the old ones.</summary>
    private static PinPoint FromCore(Split split, double depth)
    {
        if (!split.IsPolar) return Across(split, longWay: true, depth);
        if (split.Shape == SplitShape.Round) return new(depth, 0, 0);
        var middle = Innermost(split);
        return new(double.Hypot(middle, depth), Math.Atan2(depth, middle), 0);
    }

    /// <summary>Radius, on the plane of symmetry, as far from the split faces (and the inner one) as from the bark.</summary>
    private static double Innermost(Split split) => Math.Max(split.Outer / (1 + Math.Sin(split.Angle / 2)), (split.Outer + split.Inner) / 2);

    private static PinPoint Across(Split split, bool longWay, double fromMiddle) =>
        longWay == split.Outer >= split.Angle ? new(Math.Abs(fromMiddle), 0, 0) : new(0, Math.Abs(fromMiddle), 0);
}
