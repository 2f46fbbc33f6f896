using Rickyard.Core.Air;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// Heat inside one split: conduction between cells, and at each face a surface temperature at which what the half cell behind it conducts equals convection,
/// radiation and the heat of the water that evaporates or condenses there (physics.md, H5 to H7). Moisture and surface humidity are held
/// during a step; <see cref="HeatedSplit"/> renews them between steps. Temperatures are in °C.
/// </summary>
internal sealed class HeatLaw(LaneGrid grid, LaneWood wood, AirSeries air, double pressure) : TransportLaw
{
    private const int MostIterations = 30;
    private readonly double[] _conductivity = new double[grid.Count], _surface = new double[grid.OuterCells.Length], _humidity = new double[grid.OuterCells.Length];
    private readonly double[] _surfaceMoisture = new double[grid.OuterCells.Length];
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

    /// <summary>Take moisture and surface humidity.</summary>
    internal void Renew(ReadOnlySpan<double> moisture, ReadOnlySpan<double> temperature, ReadOnlySpan<double> surfaceHumidity)
    {
        for (var cell = 0; cell < _conductivity.Length; cell++)
            _conductivity[cell] = WoodThermal.TransverseConductivity(wood.BasicDensity, moisture[cell], temperature[cell] + Temperature.IcePointKelvins);
        surfaceHumidity.CopyTo(_humidity);
        for (var k = 0; k < _humidity.Length; k++) _surfaceMoisture[k] = Math.Min(moisture[grid.OuterCells[k]], 0.3);
    }

    /// <inheritdoc/>
    public override void Begin(double time, double step, ReadOnlySpan<double> state)
    {
        _now = air.Mean(time, step);
        _radiative = _now.RadiantView * SurfaceTransfer.RadiativeCoefficient(SurfaceTransfer.WoodEmissivity, _now.Kelvins);
        for (var k = 0; k < _surface.Length; k++) _surface[k] = state[grid.OuterCells[k]];
    }

    /// <inheritdoc/>
    public override void Evaluate(ReadOnlySpan<double> state)
    {
    }

    /// <inheritdoc/>
    public override void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux)
    {
        int stride = grid.Stride(axis), n = state.Length - stride;
        for (var i = 0; i < n; i++) flux[i] = Between(axis, i, stride) * (state[i + stride] - state[i]);
        flux[n..].Clear();
    }

    /// <inheritdoc/>
    public override void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own)
    {
        int stride = grid.Stride(axis), n = Math.Max(0, state.Length - stride);
        for (var i = 0; i < n; i++) next[i] = own[i] = Between(axis, i, stride);
        next[n..].Clear();
        own[n..].Clear();
    }

    /// <inheritdoc/>
    public override void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        for (var k = 0; k < flux.Length; k++) (flux[k], slope[k]) = Solve(k, state[grid.OuterCells[k]]);
    }

    private double Between(Axis axis, int cell, int stride)
    {
        var along = axis == Axis.Longitudinal ? WoodThermal.LongitudinalRatio : 1;
        return along * grid.Conductance(axis)[cell] * 0.5 * (_conductivity[cell] + _conductivity[cell + stride]);
    }

    /// <summary>Heat out through a face and its slope by the cell's temperature. [W], [W K⁻¹]</summary>
    private (double Flux, double Slope) Solve(int k, double cell)
    {
        var face = grid.Layout.OuterFaces[k];
        var inside = _conductivity[grid.OuterCells[k]] * (face.Normal == Axis.Longitudinal ? WoodThermal.LongitudinalRatio : 1) * grid.OuterInverseDepths[k];
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
        return (area * inside * (cell - surface), area * inside * outside / (inside + outside));
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
