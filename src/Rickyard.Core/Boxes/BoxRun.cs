using NodaTime;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>Runs a box with its charge through its stages, and writes down what happened at every report.</summary>
internal sealed class BoxRun
{
    private const double SecondsPerDay = NodaConstants.SecondsPerDay;
    private readonly BoxPlan _plan;
    private readonly OutsideSeries _outside;
    private readonly double[] _days;
    private readonly ChargeBody[] _bodies;
    private readonly BoxSolver _solver;
    private readonly BoxFlows _flows;
    private readonly LimitMeter _limits = new(), _reported = new();
    private readonly List<StageLimit> _found = [];
    private readonly List<(double, Surroundings)>[] _met;
    private readonly BoxLog _log;
    private readonly List<FieldSnapshot> _snapshots = [];
    private readonly double _startWater, _startHeat;

    internal BoxRun(BoxPlan plan, IReadOnlyList<ChargeClass> charge, OutsideSeries outside, double[] days, GridResolution resolution, StepControl control)
        : this(plan, [.. charge.Select(one => ChargeShape.Of(one, resolution))], outside, days, control)
    {
    }

    internal BoxRun(BoxPlan plan, IReadOnlyList<ChargeShape> charge, OutsideSeries outside, double[] days, StepControl control)
    {
        (_plan, _outside, _days) = (plan, outside, days);
        _flows = new(plan.Box, outside.Pressure);
        _bodies = [.. charge.Select(one => new ChargeBody(one, outside.Pressure))];
        _solver = new(_flows, _bodies, outside.Mean(0, 1), control);
        _met = [.. charge.Select(_ => new List<(double, Surroundings)>())];
        _log = new(days.Length, charge.Count);
        (_startWater, _startHeat) = _solver.Held;
    }

    /// <summary>Called at every report with its number and the classes as they then are.</summary>
    internal Action<int, IReadOnlyList<ChargeBody>>? Watch { get; init; }

    /// <summary>Run it.</summary>
    /// <param name="snapshots">Reports at which the first class is cut open.</param>
    /// <param name="cancellation">Stops between reports.</param>
    internal BoxTrace Run(IReadOnlySet<int> snapshots, CancellationToken cancellation)
    {
        var report = 0;
        var day = 0.0;
        for (var stage = 0; stage < _plan.Stages.Count; stage++)
        {
            var last = stage == _plan.Stages.Count - 1;
            var end = last ? _days[^1] : Math.Min(_days[^1], day + (_plan.Stages[stage].Days ?? double.PositiveInfinity));
            if (end <= day && report > 0) continue;
            RunStage(stage, day, end, ref report, snapshots, cancellation);
            day = end;
        }

        return Trace();
    }

    private void RunStage(int stage, double from, double end, ref int report, IReadOnlySet<int> snapshots, CancellationToken cancellation)
    {
        var kind = _plan.Stages[stage].Kind;
        var setting = BoxSetting.Of(_plan.Stages[stage], _plan.Box);
        _solver.Restart();
        var since = from;
        while (report < _days.Length && _days[report] <= end)
        {
            cancellation.ThrowIfCancellationRequested();
            Advance(_days[report], setting);
            if (_days[report] > since)
            {
                _found.Add(_limits.Take(stage, kind, since, _days[report]));
                _log.Share(report, _reported.Take(stage, kind, since, _days[report]));
            }

            since = _days[report];
            Report(report, snapshots);
            report++;
        }

        Advance(end, setting);
        if (end > since) _found.Add(_limits.Take(stage, kind, since, end));
    }

    private void Advance(double toDay, BoxSetting setting)
    {
        while (_solver.Time < toDay * SecondsPerDay)
        {
            var until = toDay * SecondsPerDay;
            for (var i = 0; i < _bodies.Length; i++) until = Math.Min(until, BinTime(i));
            if (until > _solver.Time) Step(until, setting);
            for (var i = 0; i < _bodies.Length; i++) BinWhenDue(i);
        }
    }

    private double BinTime(int body) => !_solver.IsBinned(body) && _bodies[body].Class.PullDay is { } day && day * SecondsPerDay > _solver.Time ? day * SecondsPerDay : double.PositiveInfinity;

    private void BinWhenDue(int body)
    {
        if (_solver.IsBinned(body) || _bodies[body].Class.PullDay is not { } day || _solver.Time < day * SecondsPerDay - 1e-6) return;
        _solver.Bin(body);
        _solver.Restart();
    }

    private void Step(double until, BoxSetting setting)
    {
        var from = _solver.Time;
        var step = _solver.Advance(until, _outside.Mean, setting);
        for (var i = 0; i < _bodies.Length; i++) _met[i].Add((step, Surroundings(_solver.Met[i])));
        var outside = _outside.Mean(from, step);
        var vapor = _solver.Air.VaporPressure(_flows.Pressure);
        var shortfall = double.IsFinite(setting.SetKelvins) && !setting.InTheOpen
            ? Math.Max(0, setting.SetKelvins - _plan.Box.Heater.Band / 2 - _solver.Air.Kelvins) : 0;
        var drying = _bodies.Where((_, i) => !_solver.IsBinned(i)).ToList();
        _limits.Watch(step, shortfall, outside.VaporPressure, vapor, drying);
        _reported.Watch(step, shortfall, outside.VaporPressure, vapor, drying);
    }

    private static Surroundings Surroundings(in StepAir air) => new(
        air.Kelvins, air.VaporPressure, air.ConvectiveCoefficient, air.AbsorbedRadiation, 0, 0, air.FreshAir, air.RadiantView);

    private void Report(int report, IReadOnlySet<int> snapshots)
    {
        var vapor = _solver.Air.VaporPressure(_flows.Pressure);
        var humidity = Math.Min(1, vapor / SaturationPressure.OverWater(_solver.Air.Kelvins));
        _log.Box(report, _solver.Air, humidity, _bodies.Sum(body => body.WaterLost), _solver.Books, Bought(), _days);
        for (var i = 0; i < _bodies.Length; i++) _log.Class(i, report, _bodies[i].Read(), _bodies[i].LossFraction);
        Watch?.Invoke(report, _bodies);
        if (snapshots.Contains(report)) _snapshots.Add(new(_days[report], _bodies[0].Grid, _bodies[0].Moisture.ToArray()));
    }

    private double Bought() => _solver.Books.Heater / _plan.Box.Heater.Efficiency + _solver.Books.Fan + _solver.Books.Dehumidifier;

    private BoxTrace Trace() => new()
    {
        Days = _days,
        Series = _log.Series,
        Use = Use(),
        Limits = LimitMeter.Merged(_found),
        Typical = _log.Classes,
        Air = [.. _met.Select(spans => new AirSeries(spans))],
        Grids = [.. _bodies.Select(body => body.Grid)],
        Snapshots = _snapshots,
        DripKilograms = _solver.Books.Dripped,
        AirEquilibrium = _log.Equilibrium,
        SurfaceShare = _log.SurfaceShare,
        Unclosed = Unclosed(),
        Steps = _solver.Steps,
    };

    private EnergyUse Use()
    {
        var books = _solver.Books;
        double wood = _bodies.Sum(body => body.Warmed), water = books.ToCharge - wood - books.Returned, walls = books.ToWalls - books.OnWalls;
        return new(water, wood, walls, books.In - water - wood - walls, books.Heater, books.Fan, books.Dehumidifier, books.Sun);
    }

    private (double Water, double Heat) Unclosed()
    {
        var (water, heat) = _solver.Held;
        var lost = _bodies.Sum(body => body.WaterGone);
        var books = _solver.Books;
        return (
            Math.Abs(_startWater + lost - water - books.Out.Water) / Math.Max(1e-3, lost),
            Math.Abs(_startHeat + books.In - heat - books.Out.Heat) / Math.Max(1, books.In + Math.Abs(books.Out.Heat)));
    }
}
