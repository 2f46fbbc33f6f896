using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// Heat inside one split: conduction between cells, and at each face a surface temperature at which what the half cell behind it conducts equals convection,
/// radiation and the heat of the water that evaporates or condenses there (physics.md, H5 to H7). Moisture and surface humidity are held
/// during a step; <see cref="HeatedSplit"/> renews them between steps. What is walked through time is the heat of each cell, so that none is lost while free
/// water melts (H8): heat per kg of dry wood over <paramref name="reference"/>, which is close to °C.
/// </summary>
/// <param name="grid">Cells whose volumes are heat capacities at the start.</param>
/// <param name="wood">The wood.</param>
/// <param name="reference">Heat capacity of each cell at the start, thawed. [J kg⁻¹ K⁻¹]</param>
/// <param name="startCelsius">Temperature at the start, at which heat capacities are taken. [°C]</param>
/// <param name="air">Surroundings through time.</param>
/// <param name="pressure">Air pressure. [Pa]</param>
internal sealed class HeatLaw(LaneGrid grid, LaneWood wood, double[] reference, double startCelsius, AirSeries air, double pressure) : TransportLaw
{
    private const int MostIterations = 30;
    private readonly double[] _conductivity = new double[grid.Count], _surface = new double[grid.OuterCells.Length], _humidity = new double[grid.OuterCells.Length];
    private readonly double[] _surfaceMoisture = new double[grid.OuterCells.Length];
    private readonly double[] _celsius = new double[grid.Count], _slope = new double[grid.Count];
    private readonly HeatContent[] _content = new HeatContent[grid.Count];
    private StepAir _now;
    private double _radiative;

    /// <summary>Area-weighted mean temperature of the faces, as last solved. [°C]</summary>
    internal double MeanSurface
    {
        get
        {
            double sum = 0, area = 0;
            for (var k = 0; k < _surface.Length; k++) (sum, area) = (sum + _surface[k] * grid.OuterAreas[k], area + grid.OuterAreas[k]);
            return sum / area;
        }
    }

    /// <summary>Temperature of every cell at the state evaluated last. [°C]</summary>
    internal ReadOnlySpan<double> Celsius => _celsius;

    /// <summary>Take moisture and surface humidity, and write the state that keeps every temperature.</summary>
    internal void Renew(ReadOnlySpan<double> moisture, ReadOnlySpan<double> surfaceHumidity, ReadOnlySpan<double> celsius, Span<double> state)
    {
        for (var cell = 0; cell < _content.Length; cell++)
        {
            _conductivity[cell] = WoodThermal.TransverseConductivity(wood.BasicDensity, moisture[cell], celsius[cell] + Temperature.IcePointKelvins);
            _content[cell] = HeatContent.Near(moisture[cell], startCelsius);
            state[cell] = _content[cell].At(celsius[cell]) / reference[cell];
        }

        surfaceHumidity.CopyTo(_humidity);
        for (var k = 0; k < _humidity.Length; k++) _surfaceMoisture[k] = Math.Min(moisture[grid.OuterCells[k]], 0.3);
    }

    /// <inheritdoc/>
    public override void Begin(double time, double step, ReadOnlySpan<double> state)
    {
        _now = air.Mean(time, step);
        _radiative = _now.RadiantView * SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, _now.Kelvins);
        Evaluate(state);
        for (var k = 0; k < _surface.Length; k++) _surface[k] = _celsius[grid.OuterCells[k]];
    }

    /// <inheritdoc/>
    public override void Evaluate(ReadOnlySpan<double> state)
    {
        for (var cell = 0; cell < _celsius.Length; cell++)
        {
            var heat = state[cell] * reference[cell];
            (_celsius[cell], _slope[cell]) = (_content[cell].Celsius(heat), _content[cell].SteepestSlope(heat) * reference[cell]);
        }
    }

    /// <inheritdoc/>
    public override void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux)
    {
        int stride = grid.Stride(axis), n = state.Length - stride;
        for (var i = 0; i < n; i++) flux[i] = Between(axis, i, stride) * (_celsius[i + stride] - _celsius[i]);
        flux[n..].Clear();
    }

    /// <inheritdoc/>
    public override void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own)
    {
        int stride = grid.Stride(axis), n = Math.Max(0, state.Length - stride);
        for (var i = 0; i < n; i++)
        {
            var between = Between(axis, i, stride);
            (next[i], own[i]) = (between * _slope[i + stride], between * _slope[i]);
        }

        next[n..].Clear();
        own[n..].Clear();
    }

    /// <inheritdoc/>
    public override void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        for (var k = 0; k < flux.Length; k++) (flux[k], slope[k]) = Solve(k, grid.OuterCells[k]);
    }

    private double Between(Axis axis, int cell, int stride)
    {
        var along = axis == Axis.Longitudinal ? WoodThermal.LongitudinalRatio : 1;
        return along * grid.Conductance(axis)[cell] * 0.5 * (_conductivity[cell] + _conductivity[cell + stride]);
    }

    /// <summary>Heat out through a face and its slope by the state of the cell behind it. [W], [W K⁻¹]</summary>
    private (double Flux, double Slope) Solve(int k, int number)
    {
        var cell = _celsius[number];
        var face = grid.Layout.OuterFaces[k];
        var inside = _conductivity[number] * (face.Normal == Axis.Longitudinal ? WoodThermal.LongitudinalRatio : 1) * grid.OuterInverseDepths[k];
        double surface = _surface[k], outside = 0;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            var given = Outside(k, face.Kind, surface, out outside);
            var step = (inside * (cell - surface) - given) / (inside + outside);
            surface += Math.Clamp(step, -20, 20);
            if (Math.Abs(step) < 1e-9) break;
        }

        _surface[k] = surface;
        var area = grid.OuterAreas[k];
        return (area * inside * (cell - surface), area * inside * outside / (inside + outside) * _slope[number]);
    }

    /// <summary>Heat a face gives off at a surface temperature, and its slope. [W m⁻²], [W m⁻² K⁻¹]</summary>
    private double Outside(int k, FaceKind kind, double celsius, out double slope)
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        double saturation = SaturationPressure.Of(kelvins), vapor = _humidity[k] * saturation;
        var film = SurfaceTransfer.VaporConductance(_now.ConvectiveCoefficient, _now.Kelvins, pressure) * SurfaceTransfer.StefanFactor(pressure, vapor, _now.VaporPressure);
        if (kind == FaceKind.Bark) film = film * wood.BarkConductance / (film + wood.BarkConductance);
        var latent = film * HeatOfSorption.OfEvaporation(_surfaceMoisture[k], kelvins);
        var dry = _now.ConvectiveCoefficient + _radiative;
        slope = dry + latent * _humidity[k] * SaturationPressure.Slope(kelvins);
        return dry * (kelvins - _now.Kelvins) + latent * (vapor - _now.VaporPressure) - _now.AbsorbedRadiation;
    }
}
