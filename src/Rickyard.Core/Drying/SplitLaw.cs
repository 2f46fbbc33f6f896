using System.Numerics.Tensors;
using System.Runtime.Intrinsics;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// Water in splits that dry in given air: tabulated diffusivities inside, surfaces whose humidity is solved together with the half cell behind them,
/// one temperature for each piece from its heat balance, and air that the piece itself may moisten (physics.md, sections D, F and H).
/// </summary>
public sealed class SplitLaw : TransportLaw
{
    private const int MostSettling = 12;
    private readonly LaneGrid _grid;
    private readonly AirSeries _air;
    private readonly LaneBody[] _bodies;
    private readonly double[] _acrossPotential, _across, _alongPotential, _along;
    private readonly SurfaceFilm _film;

    /// <summary>A law for one or four pieces of the same kind of wood in the same air.</summary>
    /// <param name="grid">Their grids.</param>
    /// <param name="table">Diffusivities of the wood.</param>
    /// <param name="woods">What each member has of its own.</param>
    /// <param name="air">Surroundings through time.</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public SplitLaw(LaneGrid grid, MobilityTable table, IReadOnlyList<LaneWood> woods, AirSeries air, double pressure = 101325)
    {
        if (woods.Count != grid.Lanes) throw new ArgumentException($"Need {grid.Lanes} woods, got {woods.Count}.", nameof(woods));
        (_grid, _air) = (grid, air);
        _bodies = [.. woods.Select((wood, lane) => new LaneBody(grid.Grids[lane], wood, table, pressure))];
        (_acrossPotential, _across) = (new double[grid.Count], new double[grid.Count]);
        (_alongPotential, _along) = (new double[grid.Count], new double[grid.Count]);
        _film = new(grid, _bodies);
    }

    /// <summary>Temperature of each piece. [°C]</summary>
    public double Celsius(int lane) => _bodies[lane].Celsius;

    /// <summary>Set the temperature of each piece. [°C]</summary>
    public void SetCelsius(double celsius)
    {
        foreach (var body in _bodies) body.SetCelsius(celsius);
    }

    /// <summary>Give a lone split's temperatures from outside, where heat is followed as a field: of the wood and of its surface. [°C]</summary>
    internal void Hold(double woodCelsius, double surfaceCelsius) =>
        _bodies[0].Hold(woodCelsius + Temperature.IcePointKelvins, surfaceCelsius + Temperature.IcePointKelvins);

    /// <summary>Humidity found at each outer face, interleaved.</summary>
    internal ReadOnlySpan<double> SurfaceHumidity => _film.Humidity;

    /// <summary>Air over the last step.</summary>
    public StepAir Air { get; private set; }

    /// <summary>Humidity of the air at the wood, moistened by the wood itself, over the last step, against saturation at the wood's temperature.</summary>
    public double LocalHumidity(int lane) => Math.Min(1, _bodies[lane].VaporPressure / _bodies[lane].Saturation);

    /// <summary>Of the vapour pressure drop from the core to the fresh air, the part that lies outside the wood; near 1 drying is limited by the surface, near 0 by the inside.</summary>
    public double OutsideShare(int lane, double coreMoisture) => _bodies[lane].OutsideShare(coreMoisture, Air.VaporPressure);

    /// <inheritdoc/>
    public override void Begin(double time, double step, ReadOnlySpan<double> state)
    {
        Begin(_air.Mean(time, step), state);
        for (var round = 0; round < MostSettling && !Settle(step, state); round++)
        {
        }

        RefreshRows();
    }

    /// <summary>Take the air of a step from someone who settles it together with the bodies.</summary>
    internal void Begin(in StepAir air, ReadOnlySpan<double> state)
    {
        Air = air;
        foreach (var body in _bodies) body.Begin(air, state, _grid);
    }

    /// <summary>The air of the step has turned out otherwise.</summary>
    internal void Meet(in StepAir air)
    {
        Air = air;
        foreach (var body in _bodies) body.Meet(air);
    }

    /// <summary>One round of settling faces and bodies with the air; gives whether the bodies stayed as they were.</summary>
    internal bool Settle(double step, ReadOnlySpan<double> state)
    {
        _film.Exchange(state);
        var settled = true;
        foreach (var body in _bodies) settled &= body.Settle(Air, step);
        return settled;
    }

    /// <summary>Bring diffusivities to the temperatures settled.</summary>
    internal void RefreshRows()
    {
        foreach (var body in _bodies) body.RefreshRow();
    }

    /// <summary>The body of a member.</summary>
    internal LaneBody Body(int lane) => _bodies[lane];

    /// <summary>How each face answers to a rise of vapour pressure beside the wood. [m³ s⁻¹ Pa⁻¹]</summary>
    internal ReadOnlySpan<double> Giving => _film.Giving;

    /// <inheritdoc/>
    public override void Accept()
    {
        foreach (var body in _bodies) body.Accept();
    }

    /// <inheritdoc/>
    public override (double Least, double Most) Reach(int lane) => _bodies[lane].Reach;

    /// <inheritdoc/>
    public override bool Answers(Span<double> answers)
    {
        if (double.IsInfinity(Air.FreshAir)) return false;
        _film.Giving.CopyTo(answers);
        return true;
    }

    /// <inheritdoc/>
    public override double Filled(int lane, double step, double given, double keeping) => _bodies[lane].Filled(Air, step, given, keeping);

    /// <inheritdoc/>
    public override void Evaluate(ReadOnlySpan<double> state)
    {
        MobilityRow first = _bodies[0].Row, second = Row(1), third = Row(2), fourth = Row(3);
        var i = 0;
        for (; i <= state.Length - LaneGrid.FullLanes; i += LaneGrid.FullLanes)
        {
            var moisture = Vector256.Create(state[i..]);
            MobilityRow.At(first.Across, second.Across, third.Across, fourth.Across, moisture, out var across).StoreUnsafe(ref _acrossPotential[i]);
            across.StoreUnsafe(ref _across[i]);
            MobilityRow.At(first.Along, second.Along, third.Along, fourth.Along, moisture, out var along).StoreUnsafe(ref _alongPotential[i]);
            along.StoreUnsafe(ref _along[i]);
        }

        for (; i < state.Length; i++)
        {
            _acrossPotential[i] = MobilityRow.At(first.Across, state[i], out _across[i]);
            _alongPotential[i] = MobilityRow.At(first.Along, state[i], out _along[i]);
        }
    }

    /// <inheritdoc/>
    public override void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux)
    {
        double[] potential = axis == Axis.Longitudinal ? _alongPotential : _acrossPotential, conductance = _grid.Conductance(axis);
        int stride = _grid.Stride(axis), n = potential.Length - stride;
        TensorPrimitives.Subtract(potential.AsSpan(stride), potential.AsSpan(0, n), flux);
        TensorPrimitives.Multiply(flux[..n], conductance.AsSpan(0, n), flux);
        flux[n..].Clear();
    }

    /// <inheritdoc/>
    public override void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own)
    {
        double[] diffusivity = axis == Axis.Longitudinal ? _along : _across, conductance = _grid.Conductance(axis);
        int stride = _grid.Stride(axis), n = Math.Max(0, diffusivity.Length - stride);
        TensorPrimitives.Multiply(conductance.AsSpan(0, n), diffusivity.AsSpan(diffusivity.Length - n), next);
        TensorPrimitives.Multiply(conductance, diffusivity, own);
        next[n..].Clear();
    }

    /// <inheritdoc/>
    public override void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope) => _film.Exchange(state, flux, slope);

    /// <summary>The row of a member, or of the lone split.</summary>
    private MobilityRow Row(int lane) => _bodies[_bodies.Length == 1 ? 0 : lane].Row;
}
