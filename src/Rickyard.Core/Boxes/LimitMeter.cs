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

    /// <summary>Neighbours of the same stage and limit made one, weighted by time.</summary>
    internal static List<StageLimit> Merged(IEnumerable<StageLimit> limits)
    {
        List<StageLimit> merged = [];
        foreach (var next in limits)
        {
            if (merged.Count > 0 && merged[^1] is var last && last.Stage == next.Stage && last.Limit == next.Limit) merged[^1] = Joined(last, next);
            else merged.Add(next);
        }

        return merged;
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
