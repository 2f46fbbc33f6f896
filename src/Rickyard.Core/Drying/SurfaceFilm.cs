using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// The faces of the pieces of a <see cref="LaneGrid"/>: for each, the surface humidity at which what the half cell behind it supplies equals
/// what film and bark carry away (physics.md, F1 to F4). At humidity 1 the surface is wet: more cannot leave than the air takes, and water
/// condenses where the air is more humid than that. Newton in the humidity within a shrinking bracket, from the last one found; four
/// faces at a time, which are those of four members or four faces of one.
/// </summary>
internal sealed class SurfaceFilm
{
    private const int Width = LaneGrid.FullLanes, MostIterations = 60;

    /// <summary>Newton stops after a change this small; its square bounds what is left.</summary>
    private const double Tolerance = 1e-5;

    /// <summary>Moisture at which a rained-on cell takes no more: 60 %, the limit found for rained-on sticks (Nelson 2000).</summary>
    private const double SoakedMoisture = 0.60;

    /// <summary>Part of the rain on a face that it takes in when dry: judgement, spread by the rack's factor on rain.</summary>
    private const double TakenBySides = 0.3, TakenByEnds = 0.7;

    private readonly LaneGrid _grid;
    private readonly LaneBody[] _bodies;
    private readonly FaceKind[] _kinds;
    private readonly int _count;
    private readonly int[] _cells, _offsets;
    private readonly double[] _humidity, _areas, _inverseDepths, _bark, _flux, _slope;

    internal SurfaceFilm(LaneGrid grid, LaneBody[] bodies)
    {
        (_grid, _bodies, _count) = (grid, bodies, grid.OuterCells.Length);
        _kinds = [.. grid.Layout.OuterFaces.Select(face => face.Kind)];
        _cells = Padded(grid.OuterCells);
        _areas = [.. grid.OuterAreas, .. new double[_cells.Length - _count]];
        _inverseDepths = Padded(grid.OuterInverseDepths);
        _offsets = [.. Enumerable.Range(0, _cells.Length).Select(k => KindOf(k) == FaceKind.End ? 2 : 0)];
        _bark = [.. Enumerable.Range(0, _cells.Length).Select(k =>
            KindOf(k) == FaceKind.Bark ? 1 / bodies[k % bodies.Length].Wood.BarkConductance : 0)];
        (_humidity, _flux, _slope) = (new double[_cells.Length], new double[_cells.Length], new double[_cells.Length]);
        Array.Fill(_humidity, 0.6);
    }

    /// <summary>Humidity found at each face.</summary>
    internal ReadOnlySpan<double> Humidity => _humidity.AsSpan(0, _count);

    /// <summary>Solve every face at the bodies' present temperature and keep each body's sums.</summary>
    internal void Exchange(ReadOnlySpan<double> state)
    {
        var air = new LaneAir(_bodies);
        var sums = new LaneSums();
        for (var k = 0; k < _cells.Length; k += Width) Solve(state, k, air, ref sums);
        for (var lane = 0; lane < _bodies.Length; lane++) _bodies[lane].Sums = sums.Of(lane, _bodies.Length);
    }

    /// <summary>The same, and give fluxes and slopes.</summary>
    /// <param name="state">Moisture of the cells. [kg kg⁻¹]</param>
    /// <param name="flux">Outflow through each face. [m³ s⁻¹]</param>
    /// <param name="slope">Its derivative by the cell's moisture. [m³ s⁻¹]</param>
    internal void Exchange(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        Exchange(state);
        _flux.AsSpan(0, _count).CopyTo(flux);
        _slope.AsSpan(0, _count).CopyTo(slope);
        if (_bodies[0].Rain is { Sides: 0, Ends: 0 }) return;
        for (var k = 0; k < _count; k++) Soak(_bodies[k % _bodies.Length], k, state[_cells[k]], ref flux[k], ref slope[k]);
    }

    private void Solve(ReadOnlySpan<double> state, int k, in LaneAir air, ref LaneSums sums)
    {
        var moisture = Vector256.Create(state[_cells[k]], state[_cells[k + 1]], state[_cells[k + 2]], state[_cells[k + 3]]);
        var inverseDepth = Vector256.LoadUnsafe(ref _inverseDepths[k]);
        var area = Vector256.LoadUnsafe(ref _areas[k]);
        var conductance = air.Film / (Vector256<double>.One + air.Film * Vector256.LoadUnsafe(ref _bark[k])) * air.InverseDensity;
        var potential = Potential(moisture, k, out var diffusivity);
        Vector256<double> open = conductance * air.Saturation, taken = conductance * (air.Saturation - air.Vapor);

        var wet = Wet(moisture, potential, inverseDepth, taken, k, air);
        var humidity = Vector256.ConditionalSelect(wet, Vector256<double>.One, Vector256.LoadUnsafe(ref _humidity[k]));
        var reach = Balance(ref humidity, wet, potential, inverseDepth, conductance, k, air);
        humidity.StoreUnsafe(ref _humidity[k]);

        var through = Vector256.ConditionalSelect(wet, Vector256<double>.One, reach / (reach + open));
        var flux = area * conductance * (humidity * air.Saturation - air.Vapor);
        var slope = Vector256.ConditionalSelect(wet, Vector256<double>.Zero, area * open * diffusivity * inverseDepth / (reach + open));
        flux.StoreUnsafe(ref _flux[k]);
        slope.StoreUnsafe(ref _slope[k]);
        sums.Add(flux, area * conductance * through, humidity, air);
    }

    /// <summary>Faces that supply more than the air takes even at saturation.</summary>
    private Vector256<double> Wet(
        Vector256<double> moisture, Vector256<double> potential, Vector256<double> inverseDepth, Vector256<double> taken, int k, in LaneAir air)
    {
        var able = Vector256.GreaterThanOrEqual(moisture, air.FiberSaturation) | Vector256.GreaterThan(air.Vapor, air.Saturation);
        if (able == Vector256<double>.Zero) return Vector256<double>.Zero;
        var supply = (potential - Potential(air.FiberSaturation, k, out _)) * inverseDepth;
        return able & Vector256.GreaterThanOrEqual(supply, taken);
    }

    /// <summary>Find the humidity; gives how far the wood reaches: its diffusivity times the slope of the isotherm over the depth.</summary>
    private Vector256<double> Balance(
        ref Vector256<double> humidity, Vector256<double> wet, Vector256<double> potential, Vector256<double> inverseDepth, Vector256<double> conductance, int k,
        in LaneAir air)
    {
        Vector256<double> low = Vector256<double>.Zero, high = Vector256<double>.One, reach = Vector256<double>.One, open = conductance * air.Saturation;
        var against = conductance * air.Vapor;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            var surface = Potential(air.Moisture(humidity, out var sorption), k, out var diffusivity);
            reach = diffusivity * sorption * inverseDepth;
            var excess = (potential - surface) * inverseDepth - open * humidity + against;
            var supplied = Vector256.GreaterThan(excess, Vector256<double>.Zero);
            low = Vector256.ConditionalSelect(supplied, humidity, low);
            high = Vector256.ConditionalSelect(supplied, high, humidity);
            var next = humidity + excess / (reach + open);
            var inside = Vector256.GreaterThanOrEqual(next, low) & Vector256.LessThanOrEqual(next, high);
            next = Vector256.ConditionalSelect(wet, humidity, Vector256.ConditionalSelect(inside, next, (low + high) * 0.5));
            var moved = Vector256.Abs(next - humidity);
            humidity = next;
            if (Vector256.LessThanAll(moved, Vector256.Create(Tolerance))) break;
        }

        return reach;
    }

    /// <summary>Potentials and diffusivities of four moistures, each from its own lane's row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Potential(Vector256<double> moisture, int k, out Vector256<double> diffusivity)
    {
        var one = _bodies.Length == 1;
        var first = _bodies[0].Row;
        double p0 = first.At(moisture[0], _offsets[k], out var d0), p1 = (one ? first : _bodies[1].Row).At(moisture[1], _offsets[k + 1], out var d1);
        double p2 = (one ? first : _bodies[2].Row).At(moisture[2], _offsets[k + 2], out var d2);
        double p3 = (one ? first : _bodies[3].Row).At(moisture[3], _offsets[k + 3], out var d3);
        diffusivity = Vector256.Create(d0, d1, d2, d3);
        return Vector256.Create(p0, p1, p2, p3);
    }

    /// <summary>Rain taken in by the cell behind the face, less the wetter it is already.</summary>
    private void Soak(LaneBody body, int k, double moisture, ref double flux, ref double slope)
    {
        var rain = KindOf(k) == FaceKind.End ? body.Rain.Ends * TakenByEnds : body.Rain.Sides * TakenBySides;
        if (rain <= 0 || moisture >= SoakedMoisture) return;
        var scale = _areas[k] / body.Wood.BasicDensity * rain;
        flux -= scale * (SoakedMoisture - moisture) / SoakedMoisture;
        slope += scale / SoakedMoisture;
    }

    private FaceKind KindOf(int k) => _kinds[Math.Min(k / _bodies.Length, _kinds.Length - 1)];

    /// <summary>Whole vectors to the end; what is added repeats the last face and has no area.</summary>
    private static T[] Padded<T>(T[] values) => [.. values, .. Enumerable.Repeat(values[^1], (Width - values.Length % Width) % Width)];
}
