using System.Numerics.Tensors;
using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>One class of a charge while it dries: its typical split, solved once and counted as many times as there are pieces, and the heat in it.</summary>
internal sealed class ChargeBody
{
    private const int MostSettling = 25;

    private readonly ChargeShape _shape;
    private readonly LaneGrid _grid;
    private readonly SplitLaw _law;
    private readonly ImplicitStepper _stepper;
    private readonly SplitProbes _probes;
    private readonly LaneWood _wood;
    private readonly double _pressure, _startMass, _startKelvins, _startMean;
    private readonly double[] _share;
    private readonly double[] _work;
    private double _lost, _carried, _outflow, _nextMean, _nextWetting;

    internal ChargeBody(ChargeShape shape, double pressure)
    {
        (_shape, Class, Grid, _grid, _wood, _probes, _pressure) = (shape, shape.Class, shape.Grid, new(shape.Grid), shape.Wood, shape.Probes, pressure);
        _law = new(_grid, shape.Table, [_wood], AirSeries.Steady(default), pressure);
        _stepper = new(_grid, _law);
        _share = shape.Probes.Mean;
        _work = new double[Grid.Count];
        shape.Start.CopyTo(_stepper.State, 0);
        (Kelvins, _startMean) = (Class.Wood.Start.Celsius + Temperature.IcePointKelvins, Mean);
        (_startKelvins, _startMass, Heat) = (Kelvins, MassOfOne, HeatAt(Mean, Kelvins));
        _law.SetCelsius(Class.Wood.Start.Celsius);
    }

    internal ChargeClass Class { get; }

    internal SplitGrid Grid { get; }

    /// <summary>Temperature of the typical split. [K]</summary>
    internal double Kelvins { get; private set; }

    /// <summary>Heat content of all pieces, as booked. [J]</summary>
    internal double Heat { get; private set; }

    /// <summary>Dew that runs off all pieces in the step begun last. [kg s⁻¹]</summary>
    internal double Drip => -_law.Body(0).Sums.Drip * Count;

    /// <summary>Faces of all pieces that air reaches. [m²]</summary>
    internal double Area => _law.Body(0).Area * Count * Class.ExposedShare;

    /// <summary>Water all pieces have lost since the start. [kg]</summary>
    internal double WaterLost => _lost * _wood.BasicDensity * Count;

    /// <summary>Water by which all pieces are lighter than at the start, by their moisture and not by what passed their faces. [kg]</summary>
    internal double WaterGone => DryMass * (_startMean - Mean);

    /// <summary>Moisture of all cells. [kg kg⁻¹]</summary>
    internal ReadOnlySpan<double> Moisture => _stepper.State;

    /// <summary>How much of the heat content is warming since the start: wood and the water still in it. [J]</summary>
    internal double Warmed => DryMass * (WoodEnthalpy.Sensible(Mean, Kelvins) - WoodEnthalpy.Sensible(Mean, _startKelvins));

    /// <summary>Air it met in the step accepted last.</summary>
    internal StepAir Air => _law.Air;

    /// <summary>Oven-dry mass of all pieces. [kg]</summary>
    internal double DryMass => _law.Body(0).DryMass * Count;

    private double Count => Class.Pieces * Grid.Copies;

    private double Mean => SplitProbes.Read(_probes.Mean, _stepper.State, 0, 1);

    private double MassOfOne => _shape.Mass(Mean);

    /// <summary>Vapour pressure in the core, at the faces, in the air at the wood, and how much is moving. [Pa], [kg s⁻¹]</summary>
    internal (double Core, double Surface, double Air, double Moving) Pressures()
    {
        var body = _law.Body(0);
        var core = body.Isotherm.Activity(SplitProbes.Read(_probes.Core, _stepper.State, 0, 1)) * body.Saturation;
        return (core, body.Sums.Weight > 0 ? body.Sums.SurfaceVapor / body.Sums.Weight : core, body.VaporPressure, Math.Max(0, body.Sums.Vapor) * Count);
    }

    /// <summary>What its air is like, given that of the box.</summary>
    internal StepAir AirIn(double kelvins, double vapor, double wallKelvins, double radiantPerArea, double view, double speed)
    {
        var exposed = Class.ExposedShare;
        var radiative = SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, kelvins);
        return new(
            kelvins, vapor, 1, 1, exposed * SurfaceTransfer.ConvectiveCoefficient(speed, Grid.Split.SurfaceDiameter, kelvins, _pressure),
            exposed * (view * radiative * (wallKelvins - kelvins) + radiantPerArea), 0, 0, double.PositiveInfinity, exposed * view);
    }

    /// <summary>What its air is like in a bin closed up at a temperature: its own vapour.</summary>
    internal StepAir AirInBin(double kelvins) => new(
        kelvins, 0.5 * SaturationPressure.OverWater(kelvins), 1, 1, SurfaceTransfer.StillAir(Grid.Split.SurfaceDiameter, kelvins, _pressure), 0, 0, 0, Surroundings.ClosedUp);

    /// <summary>Begin a step alone in some air, settled with it.</summary>
    internal void BeginAlone(double step, in StepAir air)
    {
        Begin(air);
        for (var round = 0; round < MostSettling && !Settle(step); round++)
        {
        }
    }

    /// <summary>Begin a step in some air.</summary>
    internal void Begin(in StepAir air) => _law.Begin(air, _stepper.State);

    /// <summary>One round of settling with the air; gives whether it stayed as it was.</summary>
    internal bool Settle(double step) => _law.Settle(step, _stepper.State);

    /// <summary>The air has turned out otherwise.</summary>
    internal void Meet(in StepAir air) => _law.Meet(air);

    /// <summary>Add how all pieces, closed up in a bin, answer to the warmth of the box; their vapour stays with them.</summary>
    internal void AddInBinTo(ref ChargeResponse charge, double step)
    {
        var convective = BinConductance(_law.Air.Kelvins);
        var stores = DryMass * WoodEnthalpy.Capacity(Mean, Kelvins) / step;
        charge.Heat += convective * stores / (stores + convective) * (_law.Air.Kelvins - Kelvins);
        charge.HeatByAir += convective * stores / (stores + convective);
    }

    /// <summary>Add how all pieces answer to the air of the box.</summary>
    internal void AddTo(ref ChargeResponse charge, double step)
    {
        var own = _law.Body(0).Respond(_law.Air, step);
        // A body's own answer to air is to air and walls that move together; here each moves by itself.
        double byAirOnly = own.Convective / (own.Convective + own.Radiative), byAir = own.ByAir * byAirOnly, byWall = own.ByAir - byAir;
        charge.Vapor += Count * own.Vapor;
        charge.VaporByAir += Count * own.VaporByAir * byAirOnly;
        charge.VaporByWall += Count * own.VaporByAir * (1 - byAirOnly);
        charge.VaporByVapor += Count * own.VaporByVapor;
        charge.Heat += Count * own.Convective * (_law.Air.Kelvins - own.Kelvins);
        charge.HeatByAir += Count * own.Convective * (1 - byAir);
        charge.HeatByWall -= Count * own.Convective * byWall;
        charge.HeatByVapor -= Count * own.Convective * own.ByVapor;
        charge.ToWalls += Count * own.Radiative;
        charge.ToWallsKelvins += Count * own.Radiative * own.Kelvins;
        charge.ToWallsByAir += Count * own.Radiative * byAir;
        charge.ToWallsByWall += Count * own.Radiative * byWall;
        charge.Drip += Drip;
    }

    /// <summary>Take the step; what all pieces give off and how much less per vapour pressure of the box. [kg], [kg Pa⁻¹]</summary>
    internal (double Given, double Keeping) Step(double step)
    {
        _law.RefreshRows();
        _stepper.Step(step);
        var (given, keeping) = _stepper.Answer(step, _law.Giving);
        return (given * Scale, keeping * Scale);
    }

    /// <summary>Let the air of the box fill by so much over the step; the water of the step is then settled. [Pa]</summary>
    internal void Fill(double vapor)
    {
        _stepper.Fill(vapor);
        SettleWater();
    }

    /// <summary>Take what the step did to the water as settled.</summary>
    internal void SettleWater()
    {
        _outflow = Outflow();
        Given = _outflow * Scale;
        (_nextMean, _nextWetting) = (SplitProbes.Read(_probes.Mean, _stepper.Next, 0, 1), Wetting(_stepper.Next));
    }

    /// <summary>Water given off in the step taken last. [kg]</summary>
    internal double Given { get; private set; }

    /// <summary>Error of the step over what is allowed.</summary>
    internal double Error(StepControl control) => StepError.Of(_stepper, _grid, control);

    /// <summary>Temperature that the faces settled at before the step. [K]</summary>
    internal double SettledKelvins => _law.Body(0).Celsius + Temperature.IcePointKelvins;

    /// <summary>
    /// Temperature at the end of a step in which it gave off <see cref="Given"/>, so that its heat content follows: and heat taken by convection and by radiation. [K], [W], [W]
    /// </summary>
    internal BodyHeat HeatIn(double step, double airKelvins, double wallKelvins, double radiantPerArea, double view)
    {
        double area = Area, convective = area / Class.ExposedShare * _law.Air.ConvectiveCoefficient;
        var radiative = area * view * SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, airKelvins);
        return Heated(step, new(0, 0, 0, radiantPerArea * area, Drip * BoxHeat.OfCondensing(airKelvins), convective, radiative, 0), airKelvins, wallKelvins);
    }

    /// <summary>The same closed up in a bin in the box, whose lid and sides the heat reaches as radiation would.</summary>
    internal BodyHeat HeatInBin(double step, double airKelvins) => Heated(step, new(0, 0, 0, 0, 0, BinConductance(airKelvins), 0, 0), airKelvins, airKelvins);

    private BodyHeat Heated(double step, BodyHeat given, double airKelvins, double wallKelvins)
    {
        var (convective, radiative) = (given.Convective, given.Radiative);
        var known = Heat - Given * BoxHeat.OfVapor(SettledKelvins) + step * (convective * airKelvins + radiative * wallKelvins + given.Total);
        var content = new WoodHeat(_nextMean, DryMass, _nextWetting, step * (convective + radiative));
        var kelvins = content.KelvinsAt(known, SettledKelvins);
        return given with
        {
            Kelvins = kelvins,
            FromAir = convective * (airKelvins - kelvins),
            FromWalls = radiative * (wallKelvins - kelvins),
            Stiffness = content.Slope(kelvins) / step,
        };
    }

    private double BinConductance(double kelvins) => _law.Body(0).Area * Count * SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, kelvins);

    /// <summary>Accept the step with the heat found for it.</summary>
    internal void Accept(double step, in BodyHeat heat)
    {
        Heat += step * heat.Total - Given * BoxHeat.OfVapor(SettledKelvins);
        Book();
        Kelvins = new WoodHeat(_nextMean, DryMass, _nextWetting, 0).KelvinsAt(Heat, heat.Kelvins);
        _law.Accept();
        _law.SetCelsius(Kelvins - Temperature.IcePointKelvins);
    }

    /// <summary>Read the typical split.</summary>
    internal SplitReading Read() => _shape.Read(_stepper.State, Kelvins - Temperature.IcePointKelvins);

    /// <summary>Part of the start mass lost.</summary>
    internal double LossFraction => 1 - MassOfOne / _startMass;

    /// <summary>Heat content of all pieces as a function of state. [J]</summary>
    internal double HeatAt(double mean, double kelvins) => DryMass * (WoodEnthalpy.Sensible(mean, kelvins) - Wetting(_stepper.State));

    private double Scale => _wood.BasicDensity * Count;

    private void Book()
    {
        var add = _outflow - _carried;
        var sum = _lost + add;
        (_carried, _lost) = (sum - _lost - add, sum);
        _stepper.Accept();
    }

    private double Outflow()
    {
        double sum = 0, carried = 0;
        foreach (var flow in _stepper.Outflow)
        {
            var add = flow - carried;
            var next = sum + add;
            (carried, sum) = (next - sum - add, next);
        }

        return sum;
    }

    /// <summary>Heat of wetting of a field, per oven-dry mass. [J kg⁻¹]</summary>
    private double Wetting(double[] moisture)
    {
        TensorPrimitives.Max(moisture, 0.0, _work);
        HeatOfSorption.OfWetting(_work, _work);
        return TensorPrimitives.Dot<double>(_share, _work);
    }
}
