using Rickyard.Core.Air;
using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes;

/// <summary>
/// A box and its charge through time (physics.md, section B). Each step settles the air with the faces and temperatures of all classes, lets every class
/// take the step in that air, closes the box's vapour over it as a border of their systems, and then books the heat; so that neither water nor heat is lost.
/// </summary>
internal sealed class BoxSolver
{
    private const int MostRounds = 40;

    /// <summary>From this round on the air only moves part of the way, lest it swing to and fro in a box that no thermostat holds.</summary>
    private const int DampedFrom = 5;
    private const double Damping = 0.4;

    /// <summary>The air has settled when it moves less than this in a round; what is left is booked all the same. [K], [Pa]</summary>
    private const double SettledKelvins = 0.02, SettledPascals = 2;

    /// <summary>Error given to a step whose air did not settle, so that it is cut to a third; shorter than a second it may pass. [s]</summary>
    private const double Unsettled = 8, SurelySettled = 1;

    /// <summary>Pieces may warm or cool by so much in a step, so that what depends on temperature follows. [K]</summary>
    private const double WarmedPerStep = 5;

    /// <summary>Part of the charge's faces that sees walls and not other pieces, at most: the outside of the stack against that of the box (judgement).</summary>
    private const double StackOverBox = 0.7;

    private readonly BoxFlows _flows;
    private readonly ChargeBody[] _bodies;
    private readonly bool[] _binned;
    private readonly StepControl _control;
    private readonly StepSize _size;
    private readonly HeatBooks _heat;
    private double _rise, _moistening;
    private bool _settled;
    private StepContext _pending;

    internal BoxSolver(BoxFlows flows, IReadOnlyList<ChargeBody> bodies, in Outside outside, StepControl control)
    {
        (_flows, _bodies, _control, _size) = (flows, [.. bodies], control, new(control));
        _binned = new bool[bodies.Count];
        _heat = new(flows, _bodies);
        Air = BoxAir.Of(outside, flows.Box.Volume, flows.Pressure);
        Met = new StepAir[bodies.Count];
    }

    /// <summary>Air and walls now.</summary>
    internal BoxAir Air { get; private set; }

    /// <summary>What went in and out so far.</summary>
    internal BoxBooks Books { get; } = new();

    /// <summary>Time reached. [s]</summary>
    internal double Time { get; private set; }

    /// <summary>Steps accepted and rejected.</summary>
    internal (int Accepted, int Rejected) Steps { get; private set; }

    /// <summary>Air each class met in the last step.</summary>
    internal StepAir[] Met { get; }

    /// <summary>Water in air, and heat in air and walls and charge, as functions of their state. [kg], [J]</summary>
    internal (double Water, double Heat) Held =>
        (Air.Vapor, Air.Enthalpy + WallStores * Air.WallKelvins + _bodies.Sum(body => body.HeatAt(body.Read().Mean, body.Kelvins)));

    private double WallStores => _flows.Box.WallArea * _flows.Box.WallHeatCapacity;

    /// <summary>Take a class out of the stream of air and close it up in a bin that stands in the box.</summary>
    internal void Bin(int body) => _binned[body] = true;

    /// <summary>Whether a class is closed up.</summary>
    internal bool IsBinned(int body) => _binned[body];

    /// <summary>Begin a stage with careful steps.</summary>
    internal void Restart() => _size.Restart();

    /// <summary>Take one step that does not pass a time; gives its length. [s]</summary>
    internal double Advance(double until, Func<double, double, Outside> outside, BoxSetting setting)
    {
        while (true)
        {
            var step = _size.Next(until - Time);
            var around = outside(Time, step);
            var error = setting.InTheOpen ? TryInTheOpen(step, around) : TryInBox(step, around, setting, out _pending);
            if (_size.Accepts(step, error))
            {
                if (setting.InTheOpen) AcceptInTheOpen(step, around); else Accept(step, _pending);
                _size.Grow(step, error);
                Steps = (Steps.Accepted + 1, Steps.Rejected);
                var reached = Time + step;
                Time = Math.Abs(until - reached) < 1e-9 * Math.Max(1, until) ? until : reached;
                return step;
            }

            Steps = (Steps.Accepted, Steps.Rejected + 1);
            _size.Cut(step, error);
        }
    }

    private double TryInBox(double step, in Outside outside, BoxSetting setting, out StepContext context)
    {
        var wallFilm = _flows.WallFilm(Air.Kelvins);
        var area = _bodies.Where((_, i) => !_binned[i]).Sum(body => body.Area);
        var view = area > 0 ? Math.Min(1, StackOverBox * _flows.Box.WallArea / area) : 1;
        var (kelvins, vapor, charge, radiant) = Settle(step, outside, setting, wallFilm, area, view);
        var (given, keeping) = StepBodies(step);
        var balance = new VaporBalance(_flows, Air, outside, setting, step, kelvins, wallFilm, given / step - charge.Drip, -keeping / step, vapor);
        var closed = balance.Solve();
        var exchange = balance.Exchange(closed);
        var (water, carried) = Fill(closed - vapor);
        var after = Air with
        {
            DryAir = Air.DryAir + step * (exchange.In - exchange.Out),
            Vapor = Air.Vapor + water + step * (exchange.VaporGain - charge.Drip),
        };
        context = new(Air, after, outside, setting, exchange, kelvins, _rise, wallFilm, radiant, view, carried, charge.Drip, _binned);
        if (!(after.Vapor > 0)) return double.NaN;
        return _settled || step < SurelySettled ? Error() : Math.Max(Error(), Unsettled);
    }

    /// <summary>All classes take the step; what they give off together and how much less per vapour pressure of the box. [kg], [kg Pa⁻¹]</summary>
    private (double Given, double Keeping) StepBodies(double step)
    {
        double given = 0, keeping = 0;
        for (var i = 0; i < _bodies.Length; i++)
        {
            var (gives, keeps) = _bodies[i].Step(step);
            (given, keeping) = (given + gives, _binned[i] ? keeping : keeping + keeps);
        }

        return (given, keeping);
    }

    /// <summary>Let the box fill by a vapour pressure; the water all classes gave off then, and the heat content of it as vapour. [kg], [J]</summary>
    private (double Water, double Heat) Fill(double vapor)
    {
        double water = 0, heat = 0;
        for (var i = 0; i < _bodies.Length; i++)
        {
            if (_binned[i]) _bodies[i].SettleWater(); else _bodies[i].Fill(vapor);
            water += _bodies[i].Given;
            heat += _bodies[i].Given * BoxHeat.OfVapor(_bodies[i].SettledKelvins);
        }

        return (water, heat);
    }

    /// <summary>Air, faces and temperatures of all classes settled together at the moisture of the step's start.</summary>
    private (double Kelvins, double Vapor, ChargeResponse Charge, double Radiant) Settle(
        double step, in Outside outside, BoxSetting setting, double wallFilm, double area, double view)
    {
        double kelvins = Air.Kelvins, vapor = Air.VaporPressure(_flows.Pressure), wall = Air.WallKelvins, radiant = 0;
        var caught = _flows.Box.Heater.RadiantShare * Math.Min(1, area / _flows.Box.WallArea);
        ChargeResponse charge = default;
        for (var round = 0; round < MostRounds; round++)
        {
            charge = new() { AtKelvins = kelvins, AtVapor = vapor, AtWall = wall };
            var settled = SettleBodies(step, kelvins, vapor, wall, radiant, view, round == 0, ref charge);
            var balance = new HeatBalance(_flows, Air, outside, setting, step, wallFilm, caught, charge);
            var (nextKelvins, nextVapor) = balance.Solve();
            var moved = Math.Abs(nextKelvins - kelvins) > SettledKelvins || Math.Abs(nextVapor - vapor) > SettledPascals;
            var part = round < DampedFrom ? 1 : Damping;
            (kelvins, vapor) = (kelvins + part * (nextKelvins - kelvins), vapor + part * (nextVapor - vapor));
            wall = balance.WallKelvins(kelvins);
            var heater = _flows.Heater(kelvins, setting.SetKelvins);
            radiant = area > 0 ? caught * heater / area : 0;
            Spread(kelvins, heater + _flows.Box.Fan.Power, charge.Vapor);
            _settled = settled && !moved && round > 0;
            if (_settled) break;
        }

        return (charge.AtKelvins, charge.AtVapor, charge, radiant);
    }

    private bool SettleBodies(double step, double kelvins, double vapor, double wall, double radiant, double view, bool first, ref ChargeResponse charge)
    {
        var settled = true;
        for (var i = 0; i < _bodies.Length; i++)
        {
            if (_binned[i])
            {
                _bodies[i].BeginAlone(step, Met[i] = _bodies[i].AirInBin(kelvins));
                _bodies[i].AddInBinTo(ref charge, step);
                continue;
            }

            var (shelfKelvins, shelfVapor) = OnShelf(_bodies[i].Class.Shelf, kelvins, vapor);
            var air = _bodies[i].AirIn(shelfKelvins, shelfVapor, wall, radiant, view, _flows.Box.Fan.Speed);
            if (first) _bodies[i].Begin(air); else _bodies[i].Meet(air);
            settled &= _bodies[i].Settle(step);
            _bodies[i].AddTo(ref charge, step);
            Met[i] = air;
        }

        return settled;
    }

    /// <summary>Air on a shelf: warmer and drier than the mean, or colder and moister, but not beyond its saturation. [K], [Pa]</summary>
    private (double Kelvins, double Vapor) OnShelf(ShelfPlace shelf, double kelvins, double vapor)
    {
        var place = StepContext.Position(shelf);
        if (place == 0) return (kelvins, vapor);
        var there = kelvins + place * _rise;
        return (there, Math.Clamp(vapor - place * Math.Min(_moistening, vapor), 0, SaturationPressure.OverWater(there)));
    }

    /// <summary>How much the air cools and moistens on its way through the charge: what the heater gives and the charge gives off, over the air carried round.</summary>
    private void Spread(double kelvins, double heat, double evaporated)
    {
        const double mostRise = 25;
        var flow = _flows.Box.Fan.Flow;
        if (flow <= 0 || _bodies.All(body => body.Class.Shelf == ShelfPlace.Middle)) return;
        _rise = 0.5 * (_rise + Math.Clamp(heat / (AirProperties.Density(kelvins, _flows.Pressure) * AirConstants.DryAirHeatCapacity * flow), 0, mostRise));
        _moistening = 0.5 * (_moistening + Math.Max(0, evaporated) * AirConstants.VaporGasConstant * kelvins / flow);
    }

    private double Error()
    {
        double worst = 0;
        foreach (var body in _bodies)
        {
            worst = Math.Max(worst, body.Error(_control));
            var warmed = Math.Abs(body.SettledKelvins - body.Kelvins) / WarmedPerStep;
            worst = Math.Max(worst, warmed * warmed);
        }

        return worst;
    }

    private void Accept(double step, in StepContext context)
    {
        var heat = _heat.CloseStep(step, context);
        Books.Add(step, heat);
        for (var i = 0; i < _bodies.Length; i++) _bodies[i].Accept(step, _heat.Heats[i]);
        Air = context.After with { Kelvins = heat.AirKelvins, WallKelvins = Air.WallKelvins + step * (heat.ToWalls - heat.ThroughWalls) / WallStores };
    }

    private double TryInTheOpen(double step, in Outside outside)
    {
        for (var i = 0; i < _bodies.Length; i++)
        {
            Met[i] = _binned[i]
                ? _bodies[i].AirInBin(outside.Kelvins)
                : _bodies[i].AirIn(outside.Kelvins, outside.VaporPressure, outside.Kelvins, 0, 1, SurfaceTransfer.StillIndoorSpeed);
            _bodies[i].BeginAlone(step, Met[i]);
            _bodies[i].Step(step);
            _bodies[i].SettleWater();
        }

        return Error();
    }

    private void AcceptInTheOpen(double step, in Outside outside)
    {
        LeaveOpen(outside);
        for (var i = 0; i < _bodies.Length; i++)
        {
            var heat = _binned[i] ? _bodies[i].HeatInBin(step, outside.Kelvins) : _bodies[i].HeatIn(step, outside.Kelvins, outside.Kelvins, 0, 1);
            Books.AddInTheOpen(step * heat.Total, _bodies[i].Given, _bodies[i].Given * BoxHeat.OfVapor(_bodies[i].SettledKelvins));
            _bodies[i].Accept(step, heat);
        }
    }

    /// <summary>The emptied box takes the state of outside.</summary>
    private void LeaveOpen(in Outside outside)
    {
        var open = BoxAir.Of(outside, _flows.Box.Volume, _flows.Pressure);
        Books.AddOpened(WallStores * (Air.WallKelvins - open.WallKelvins), Air.Enthalpy - open.Enthalpy, Air.Vapor - open.Vapor);
        Air = open;
    }
}
