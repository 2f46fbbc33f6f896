namespace Rickyard.Core.Boxes;

/// <summary>
/// Watches what holds a run back (physics.md, eq. B13): how far the air is below its setting with the heater at full power, and how the drop in vapour pressure from the core
/// to the air outside divides into inside of the wood, surface, and box against outside; weighted by what is moving.
/// </summary>
internal sealed class LimitMeter
{
    /// <summary>Air this far below its thermostat band counts as a heater that cannot hold it (judgement: beyond what a thermostat misreads). [K]</summary>
    private const double HeaterMisses = 1.5;

    /// <summary>Drying slower than this is none: a thousandth of the dry mass in a day. [s⁻¹]</summary>
    private const double NoDrying = 1e-3 / 86400;

    private double _time, _shortfall, _weight, _vapor, _surface, _inside, _moved, _dry;

    /// <summary>Watch a step.</summary>
    internal void Watch(double step, double shortfall, double outsideVapor, double boxVapor, IEnumerable<ChargeBody> bodies)
    {
        (_time, _shortfall, _dry) = (_time + step, _shortfall + step * shortfall, 0);
        foreach (var body in bodies)
        {
            var (core, surface, air, moving) = body.Pressures();
            var drop = Math.Max(1, core - outsideVapor);
            var weight = step * moving;
            _weight += weight;
            _vapor += weight * Math.Clamp((boxVapor - outsideVapor) / drop, 0, 1);
            _surface += weight * Math.Clamp((surface - air) / drop, 0, 1);
            _inside += weight * Math.Clamp((core - surface) / drop, 0, 1);
            _moved += weight;
            _dry += body.DryMass;
        }
    }

    /// <summary>What limited since the last time it was asked; forgets it.</summary>
    internal StageLimit Take(int stage, StageKind kind, double fromDay, double toDay)
    {
        var shares = _weight > 0 ? (Vapor: _vapor / _weight, Surface: _surface / _weight, Inside: _inside / _weight) : default;
        var missing = _time > 0 ? _shortfall / _time : 0;
        var idle = kind == StageKind.ClosedRest || _moved < NoDrying * _dry * _time;
        var limit = missing > HeaterMisses ? BoxLimit.Heater
            : idle ? BoxLimit.None
            : shares.Vapor >= shares.Surface && shares.Vapor >= shares.Inside ? BoxLimit.Vapor
            : shares.Surface >= shares.Inside ? BoxLimit.Surface : BoxLimit.Inside;
        (_time, _shortfall, _weight, _vapor, _surface, _inside, _moved) = (0, 0, 0, 0, 0, 0, 0);
        return new(stage, fromDay, toDay, limit, missing, shares.Vapor, shares.Surface, shares.Inside);
    }

    /// <summary>
    /// Neighbours of the same stage and limit made one, weighted by time; then stretches too short to plan by go to the longer of their neighbours, all but a heater that
    /// warms the box up.
    /// </summary>
    internal static List<StageLimit> Merged(IEnumerable<StageLimit> limits)
    {
        var merged = Alike(limits);
        for (var shortest = ShortestOf(merged); shortest is { } found; shortest = ShortestOf(merged)) merged = Alike(Absorbed(merged, found));
        return merged;
    }

    /// <summary>Of its stage, a stretch shorter than this is not told (judgement).</summary>
    private const double TooShort = 0.04;

    private static List<StageLimit> Alike(IEnumerable<StageLimit> limits)
    {
        List<StageLimit> merged = [];
        foreach (var next in limits)
        {
            if (merged.Count > 0 && merged[^1] is var last && last.Stage == next.Stage && last.Limit == next.Limit) merged[^1] = Joined(last, next);
            else merged.Add(next);
        }

        return merged;
    }

    private static int? ShortestOf(List<StageLimit> limits)
    {
        double Of(int i) => (limits[i].ToDay - limits[i].FromDay) / limits.Where(one => one.Stage == limits[i].Stage).Sum(one => one.ToDay - one.FromDay);
        bool Warms(int i) => limits[i].Limit == BoxLimit.Heater && (i == 0 || limits[i - 1].Stage != limits[i].Stage);
        return Enumerable.Range(0, limits.Count).Where(i => !Warms(i) && Of(i) < TooShort).OrderBy(Of).Select(i => (int?)i).FirstOrDefault();
    }

    private static List<StageLimit> Absorbed(List<StageLimit> limits, int gone)
    {
        var into = new[] { gone - 1, gone + 1 }.Where(i => i >= 0 && i < limits.Count && limits[i].Stage == limits[gone].Stage).MaxBy(i => limits[i].ToDay - limits[i].FromDay);
        var joined = into < gone ? Joined(limits[into], limits[gone]) : Joined(limits[gone], limits[into]) with { Limit = limits[into].Limit };
        return [.. limits.Where((_, i) => i < Math.Min(into, gone)), joined, .. limits.Where((_, i) => i > Math.Max(into, gone))];
    }

    private static StageLimit Joined(StageLimit first, StageLimit second)
    {
        double a = first.ToDay - first.FromDay, b = second.ToDay - second.FromDay;
        double Of(double x, double y) => a + b > 0 ? (a * x + b * y) / (a + b) : x;
        return first with
        {
            ToDay = second.ToDay,
            Shortfall = Of(first.Shortfall, second.Shortfall),
            VaporShare = Of(first.VaporShare, second.VaporShare),
            SurfaceShare = Of(first.SurfaceShare, second.SurfaceShare),
            InsideShare = Of(first.InsideShare, second.InsideShare),
        };
    }
}
