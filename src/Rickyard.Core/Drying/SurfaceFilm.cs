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
    private const int Width = LaneGrid.FullLanes, MostRounds = 60;

    /// <summary>Newton stops after a change this small; its square bounds what is left.</summary>
    private const double Tolerance = 1e-4;

    /// <summary>Moisture at which a rained-on cell takes no more: 60 %, the limit found for rained-on sticks (Nelson 2000).</summary>
    internal const double SoakedMoisture = 0.60;

    /// <summary>Part of the rain on a face that it takes in when dry: judgement, spread by the rack's factor on rain.</summary>
    private const double TakenBySides = 0.3, TakenByEnds = 0.7;

    /// <summary>Area of the faces that only fill the last vector: nothing, but not a division by zero. [m²]</summary>
    private const double NoArea = 1e-30;

    private readonly LaneBody[] _bodies;
    private readonly FaceKind[] _kinds;
    private readonly int _count;
    private readonly int[] _cells;
    private readonly double[][] _rows;
    private readonly double[] _humidity, _areas, _inverseDepths, _bark, _flux, _slope, _supply, _cell, _cellReach, _conductance, _wet, _low, _high, _reach, _moved, _giving;

    internal SurfaceFilm(LaneGrid grid, LaneBody[] bodies)
    {
        (_bodies, _count) = (bodies, grid.OuterCells.Length);
        _kinds = [.. grid.Layout.OuterFaces.Select(face => face.Kind)];
        _cells = Padded(grid.OuterCells);
        _areas = [.. grid.OuterAreas, .. Enumerable.Repeat(NoArea, _cells.Length - _count)];
        _inverseDepths = Padded(grid.OuterInverseDepths);
        _rows = [.. Enumerable.Range(0, _cells.Length).Select(k => KindOf(k) == FaceKind.End ? bodies[k % bodies.Length].Row.Along : bodies[k % bodies.Length].Row.Across)];
        _bark = [.. Enumerable.Range(0, _cells.Length).Select(k =>
            KindOf(k) == FaceKind.Bark ? 1 / bodies[k % bodies.Length].Wood.BarkConductance : 0)];
        var n = _cells.Length;
        (_humidity, _flux, _slope, _supply, _cell, _cellReach) = (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        (_moved, _giving) = (new double[n / Width], new double[n]);
        (_conductance, _wet, _low, _high, _reach) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        Array.Fill(_humidity, 0.6);
    }

    /// <summary>Humidity found at each face.</summary>
    internal ReadOnlySpan<double> Humidity => _humidity.AsSpan(0, _count);

    /// <summary>How much less each face gives off per vapour pressure beside the wood. [m³ s⁻¹ Pa⁻¹]</summary>
    internal ReadOnlySpan<double> Giving => _giving.AsSpan(0, _count);

    /// <summary>Solve every face at the bodies' present temperature and keep each body's sums.</summary>
    internal void Exchange(ReadOnlySpan<double> state)
    {
        var air = new LaneAir(_bodies);
        for (var k = 0; k < _cells.Length; k += Width) Prepare(state, k, air);
        for (var round = 0; round < MostRounds && Improve(air) > Tolerance; round++)
        {
        }

        var sums = new LaneSums();
        for (var k = 0; k < _cells.Length; k += Width) Finish(k, air, ref sums);
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

    /// <summary>What the cell and the film of four faces bring, and whether the faces are wet.</summary>
    private void Prepare(ReadOnlySpan<double> state, int k, in LaneAir air)
    {
        var moisture = Vector256.Create(state[_cells[k]], state[_cells[k + 1]], state[_cells[k + 2]], state[_cells[k + 3]]);
        var inverseDepth = Vector256.LoadUnsafe(ref _inverseDepths[k]);
        var conductance = air.Film / (Vector256<double>.One + air.Film * Vector256.LoadUnsafe(ref _bark[k])) * air.InverseDensity;
        var supply = Potential(moisture, k, out var diffusivity) * inverseDepth;
        var wet = Wet(moisture, supply, inverseDepth, conductance * (air.Saturation - air.Vapor), k, air);
        moisture.StoreUnsafe(ref _cell[k]);
        supply.StoreUnsafe(ref _supply[k]);
        (diffusivity * inverseDepth).StoreUnsafe(ref _cellReach[k]);
        conductance.StoreUnsafe(ref _conductance[k]);
        wet.StoreUnsafe(ref _wet[k]);
        Vector256.ConditionalSelect(wet, Vector256<double>.One, Vector256.LoadUnsafe(ref _humidity[k])).StoreUnsafe(ref _humidity[k]);
        _moved[k / Width] = double.MaxValue;
        Vector256<double>.Zero.StoreUnsafe(ref _low[k]);
        Vector256<double>.One.StoreUnsafe(ref _high[k]);
    }

    /// <summary>Faces that supply more than the air takes even at saturation: all bits set.</summary>
    private Vector256<double> Wet(
        Vector256<double> moisture, Vector256<double> supply, Vector256<double> inverseDepth, Vector256<double> taken, int k, in LaneAir air)
    {
        var able = Vector256.GreaterThanOrEqual(moisture, air.FiberSaturation) | Vector256.GreaterThan(air.Vapor, air.Saturation);
        if (able == Vector256<double>.Zero) return Vector256<double>.Zero;
        var left = supply - Potential(air.FiberSaturation, k, out _) * inverseDepth;
        return able & Vector256.GreaterThanOrEqual(left, taken);
    }

    /// <summary>
    /// One Newton step of all faces, kept within their brackets; gives the largest change. All faces before the next step, not each to its end: the
    /// processor then works on several at once.
    /// </summary>
    private double Improve(in LaneAir air)
    {
        double worst = 0;
        for (var k = 0; k < _cells.Length; k += Width)
        {
            if (_moved[k / Width] < Tolerance) continue;
            Vector256<double> humidity = Vector256.LoadUnsafe(ref _humidity[k]), inverseDepth = Vector256.LoadUnsafe(ref _inverseDepths[k]);
            Vector256<double> conductance = Vector256.LoadUnsafe(ref _conductance[k]), open = conductance * air.Saturation;
            var surface = Potential(air.Moisture(humidity, out var sorption), k, out var diffusivity);
            var reach = diffusivity * sorption * inverseDepth;
            var excess = Vector256.LoadUnsafe(ref _supply[k]) - surface * inverseDepth - open * humidity + conductance * air.Vapor;
            var supplied = Vector256.GreaterThan(excess, Vector256<double>.Zero);
            var low = Vector256.ConditionalSelect(supplied, humidity, Vector256.LoadUnsafe(ref _low[k]));
            var high = Vector256.ConditionalSelect(supplied, Vector256.LoadUnsafe(ref _high[k]), humidity);
            var next = humidity + excess / (reach + open);
            var inside = Vector256.GreaterThanOrEqual(next, low) & Vector256.LessThanOrEqual(next, high);
            next = Vector256.ConditionalSelect(inside, next, (low + high) * 0.5);
            next = Vector256.ConditionalSelect(Vector256.LoadUnsafe(ref _wet[k]), humidity, next);
            worst = Math.Max(worst, _moved[k / Width] = Largest(Vector256.Abs(next - humidity)));
            low.StoreUnsafe(ref _low[k]);
            high.StoreUnsafe(ref _high[k]);
            reach.StoreUnsafe(ref _reach[k]);
            next.StoreUnsafe(ref _humidity[k]);
        }

        return worst;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Largest(Vector256<double> v) => Math.Max(Math.Max(v[0], v[1]), Math.Max(v[2], v[3]));

    private void Finish(int k, in LaneAir air, ref LaneSums sums)
    {
        Vector256<double> humidity = Vector256.LoadUnsafe(ref _humidity[k]), reach = Vector256.LoadUnsafe(ref _reach[k]), wet = Vector256.LoadUnsafe(ref _wet[k]);
        Vector256<double> area = Vector256.LoadUnsafe(ref _areas[k]), conductance = area * Vector256.LoadUnsafe(ref _conductance[k]), open = conductance * air.Saturation;
        var share = Vector256<double>.One / (area * reach + open);
        var through = Vector256.ConditionalSelect(wet, Vector256<double>.One, area * reach * share);
        var flux = conductance * (humidity * air.Saturation - air.Vapor);
        var condensing = wet & Vector256.LessThan(flux, Vector256<double>.Zero);
        var moisture = Vector256.LoadUnsafe(ref _cell[k]);
        var inverseRoom = Vector256<double>.One / (Vector256.Create(SoakedMoisture) - air.FiberSaturation);
        var taken = Vector256.ConditionalSelect(condensing, flux * Room(moisture, inverseRoom), flux);
        taken.StoreUnsafe(ref _flux[k]);
        var filling = condensing & Vector256.GreaterThan(moisture, air.FiberSaturation) & Vector256.LessThan(moisture, Vector256.Create(SoakedMoisture));
        var wetSlope = Vector256.ConditionalSelect(filling, -flux * inverseRoom, Vector256<double>.Zero);
        Vector256.ConditionalSelect(wet, wetSlope, area * open * Vector256.LoadUnsafe(ref _cellReach[k]) * share).StoreUnsafe(ref _slope[k]);
        (conductance * through).StoreUnsafe(ref _giving[k]);
        sums.Add(flux, conductance * through, humidity, flux - taken, air);
    }

    /// <summary>Part of the condensing water that a cell takes in: all up to fibre saturation, none when soaked; the rest drips off.</summary>
    private static Vector256<double> Room(Vector256<double> moisture, Vector256<double> inverseRoom) => Vector256.Min(
        Vector256<double>.One, Vector256.Max(Vector256<double>.Zero, (Vector256.Create(SoakedMoisture) - moisture) * inverseRoom));

    /// <summary>Potentials and diffusivities of four moistures, each from its own lane's row, across the grain or at the ends along it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Potential(Vector256<double> moisture, int k, out Vector256<double> diffusivity)
    {
        var rows = _rows;
        return MobilityRow.At(rows[k], rows[k + 1], rows[k + 2], rows[k + 3], moisture, out diffusivity);
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
