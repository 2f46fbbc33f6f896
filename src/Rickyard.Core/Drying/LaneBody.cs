using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// One piece as a body in air: its one temperature and the vapour pressure beside it, settled together so that heat in equals heat used and
/// vapour given off equals vapour carried away (physics.md, H1 to H4). Fast state only; the moisture field is the stepper's.
/// </summary>
internal sealed class LaneBody(SplitGrid grid, LaneWood wood, MobilityTable table, double pressure)
{
    private const double VaporGasConstant = 461.5, AirHeatPerVolume = 1200, RowTolerance = 0.02;

    /// <summary>Newton stops after a change this small (in vapour pressure: of saturation); its square bounds what is left.</summary>
    private const double NewtonKelvins = 0.2, NewtonVapor = 0.01;
    private readonly double _area = grid.OuterFaces.Sum(face => face.Area);
    private readonly double _dryMass = grid.Volumes.Sum() * wood.BasicDensity;
    private double _before = Temperature.IcePointKelvins + 20, _kelvins = Temperature.IcePointKelvins + 20;
    private double _heldWood, _capacity, _latent, _rowCelsius = double.NaN, _rowGain = double.NaN, _mobilityGain = 1, _moved;

    /// <summary>Faces of the part of the piece that the grid covers. [m²]</summary>
    internal double Area => _area;

    /// <summary>Its oven-dry mass. [kg]</summary>
    internal double DryMass => _dryMass;

    /// <summary>What the member has of its own.</summary>
    internal LaneWood Wood => wood;

    /// <summary>Diffusivities at the present temperature.</summary>
    internal MobilityRow Row { get; } = new();

    /// <summary>Isotherm at the present temperature.</summary>
    internal SorptionIsotherm Isotherm { get; private set; }

    /// <summary>Saturation pressure at the wood's temperature, gain of the varying air included. [Pa]</summary>
    internal double Saturation { get; private set; }

    /// <summary>Vapour pressure beside the wood. [Pa]</summary>
    internal double VaporPressure { get; private set; }

    /// <summary>Vapour conductance of the air film. [kg m⁻² s⁻¹ Pa⁻¹]</summary>
    internal double FilmConductance { get; private set; }

    /// <summary>Rain on bark and split faces, and on ends. [kg m⁻² s⁻¹]</summary>
    internal (double Sides, double Ends) Rain { get; private set; }

    /// <summary>Sums over the faces from the last exchange: vapour given off [kg s⁻¹] and its derivatives by vapour pressure beside the wood and by saturation pressure.</summary>
    internal SurfaceSums Sums { get; set; }

    /// <summary>Moisture that the air alone would bring the wood to, driest and wettest: its balance with the air, and soaked where rain or dew falls on it. [kg kg⁻¹]</summary>
    internal (double Least, double Most) Reach
    {
        get
        {
            var humidity = Math.Min(1, VaporPressure / Saturation);
            var wetted = humidity >= 1 || Rain is not { Sides: 0, Ends: 0 };
            var balance = Isotherm.Moisture(humidity);
            return (balance, wetted ? Math.Max(SurfaceFilm.SoakedMoisture, balance) : balance);
        }
    }

    /// <summary>[°C]</summary>
    internal double Celsius => _kelvins - Temperature.IcePointKelvins;

    /// <summary>Of the vapour pressure drop from the core to the fresh air, the part that lies outside the wood: film, bark and stack air; 0 to 1.</summary>
    internal double OutsideShare(double coreMoisture, double freshVapor)
    {
        var drop = Isotherm.Activity(coreMoisture) * Saturation - freshVapor;
        return Sums.Weight > 0 && Math.Abs(drop) > 1e-9 ? Math.Clamp((Sums.SurfaceVapor / Sums.Weight - freshVapor) / drop, 0, 1) : 0;
    }

    internal void SetCelsius(double celsius) => _before = _kelvins = celsius + Temperature.IcePointKelvins;

    internal void Accept() => _before = _kelvins;

    /// <summary>Take the air of a step; start from the temperature before it.</summary>
    internal void Begin(in StepAir air, ReadOnlySpan<double> state, LaneGrid lanes)
    {
        _mobilityGain = air.MobilityGain;
        _kelvins = _before;
        Meet(air);
        Rain = (air.RainOnSides, air.RainOnEnds);
        var moisture = MeanMoisture(state, lanes);
        _capacity = _dryMass * WoodThermal.HeatCapacity(moisture, _kelvins);
        _latent = HeatOfSorption.OfEvaporation(Math.Min(moisture, 0.3), _kelvins);
        if (double.IsNaN(_rowCelsius)) RefreshRow();
    }

    /// <summary>Take other air at the temperature the wood has come to.</summary>
    internal void Meet(in StepAir air)
    {
        VaporPressure = air.VaporPressure;
        Warm(air);
        FilmConductance = SurfaceTransfer.VaporConductance(air.ConvectiveCoefficient, air.Kelvins, pressure)
            * SurfaceTransfer.StefanFactor(pressure, Saturation, air.VaporPressure);
    }

    /// <summary>Whether temperatures are given from outside instead of settled here.</summary>
    internal bool IsHeld { get; private set; }

    /// <summary>Give the temperatures from outside: of the wood for its diffusivities, of its surface for its vapour pressure. [K]</summary>
    internal void Hold(double woodKelvins, double surfaceKelvins)
    {
        (IsHeld, _heldWood, _before) = (true, woodKelvins, surfaceKelvins);
    }

    /// <summary>One Newton step on temperature and vapour pressure together.</summary>
    /// <returns>Whether both stayed where they were.</returns>
    internal bool Settle(in StepAir air, double step)
    {
        if (IsHeld) return true;
        double radiative = Radiative(air), convective = Convective(air);
        double storage = _capacity / (step * _area), gain = convective + radiative, fresh = air.FreshAir / (VaporGasConstant * air.Kelvins);
        var (evaporation, byVapor, bySaturation) = (Sums.Vapor / _area, Sums.ByVapor / _area, Sums.BySaturation / _area);
        var byKelvins = bySaturation * SaturationPressure.Slope(_kelvins) * air.SaturationGain;
        var heat = storage * (_kelvins - _before) - gain * (air.Kelvins - _kelvins) - air.AbsorbedRadiation + _latent * evaporation;
        double change, vaporChange = 0;
        if (double.IsInfinity(fresh))
        {
            change = -heat / (storage + gain + _latent * byKelvins);
        }
        else
        {
            var vapor = fresh * (VaporPressure - air.VaporPressure) - evaporation;
            double a = storage + gain + _latent * byKelvins, b = _latent * byVapor, c = -byKelvins, d = fresh - byVapor;
            var determinant = a * d - b * c;
            change = (-heat * d + vapor * b) / determinant;
            vaporChange = (-vapor * a + heat * c) / determinant;
        }

        var from = _kelvins;
        _kelvins = Math.Clamp(_kelvins + Math.Clamp(change, -20, 20), 200, 420);
        _moved = _kelvins - from;
        VaporPressure = Math.Max(0, VaporPressure + vaporChange);
        Warm(air);
        var share = Math.Min(1, fresh / -byVapor);
        return Math.Abs(change) < NewtonKelvins * share && Math.Abs(vaporChange) < NewtonVapor * share * Saturation;
    }

    /// <summary>How the body, settled with the air of a step, would answer to other air.</summary>
    internal BodyResponse Respond(in StepAir air, double step)
    {
        double convective = Convective(air), radiative = Radiative(air);
        var byKelvins = Sums.BySaturation * SaturationPressure.Slope(_kelvins) * air.SaturationGain;
        var stiffness = _capacity / step + (convective + radiative) * _area + _latent * byKelvins;
        double byAir = (convective + radiative) * _area / stiffness, byVapor = -_latent * Sums.ByVapor / stiffness;
        return new(
            _kelvins, byAir, byVapor, Sums.Vapor + byKelvins * _moved, byKelvins * byAir, Sums.ByVapor + byKelvins * byVapor, convective * _area, radiative * _area);
    }

    /// <summary>By how much the vapour pressure beside the wood had to be higher over a step for the air to carry off what was given off. [Pa]</summary>
    /// <param name="air">Over the step.</param>
    /// <param name="step">[s]</param>
    /// <param name="given">What the faces gave off at the vapour pressure of its start. [m³]</param>
    /// <param name="keeping">How much less per vapour pressure. [m³ Pa⁻¹]</param>
    internal double Filled(in StepAir air, double step, double given, double keeping)
    {
        var carrying = step * air.FreshAir / (VaporGasConstant * air.Kelvins) * _area / wood.BasicDensity;
        return IsHeld ? 0 : (given - carrying * (VaporPressure - air.VaporPressure)) / (carrying + keeping);
    }

    /// <summary>Bring the diffusivities to the settled temperature.</summary>
    internal void RefreshRow()
    {
        var celsius = IsHeld ? _heldWood - Temperature.IcePointKelvins : Celsius;
        if (Math.Abs(celsius - _rowCelsius) < RowTolerance && Math.Abs(_mobilityGain - _rowGain) < 1e-3) return;
        (_rowCelsius, _rowGain) = (celsius, _mobilityGain);
        var density = Math.Pow(wood.BasicDensity / table.Mobility.BasicDensity, WaterMobility.DensityExponent);
        table.Blend(celsius, wood.Bound * density * _mobilityGain, wood.Bound * wood.Free, Row);
    }

    /// <summary>Convection from the air fed in: the air at the wood is cooler where little passes.</summary>
    private static double Convective(in StepAir air)
    {
        if (double.IsInfinity(air.FreshAir)) return air.ConvectiveCoefficient;
        var carried = AirHeatPerVolume * air.FreshAir;
        return air.ConvectiveCoefficient * carried / (air.ConvectiveCoefficient + carried);
    }

    private static double Radiative(in StepAir air) => air.RadiantView * SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, air.Kelvins);

    private void Warm(in StepAir air)
    {
        var isotherm = SorptionIsotherm.At(Celsius);
        Isotherm = isotherm with { Scale = isotherm.Scale * wood.Sorption };
        Saturation = SaturationPressure.Of(_kelvins) * air.SaturationGain;
    }

    private double MeanMoisture(ReadOnlySpan<double> state, LaneGrid lanes)
    {
        double sum = 0, total = 0;
        var lane = 0;
        while (!ReferenceEquals(lanes.Grids[lane], grid)) lane++;
        for (var i = lane; i < state.Length; i += lanes.Lanes) (sum, total) = (sum + state[i] * lanes.Volumes[i], total + lanes.Volumes[i]);
        return sum / total;
    }
}
