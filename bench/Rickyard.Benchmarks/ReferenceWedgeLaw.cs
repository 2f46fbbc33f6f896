using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;

namespace Rickyard.Benchmarks;

/// <summary>
/// The comparison problems' own coefficients (oak curve limited by the cell wall, midpoint diffusivity on faces, surface balance in relative
/// humidity), moisture in percent, isothermal at air temperature. The product's physics is another law on the same stepper.
/// Exponentials of small arguments by a fifth-degree polynomial, squared twice: relative error below 5e-6 for |y| ≤ 1.2.
/// </summary>
internal sealed class ReferenceWedgeLaw(LaneGrid grid) : TransportLaw
{
    private const double BasicDensity = 600, Convection = 8, BarkFactor = 0.05;
    private readonly int _count = grid.OuterCells.Length;
    private readonly double[] _humidity = Padded(grid, _ => 0.5), _drive = Padded(grid, _ => 1), _against = Padded(grid, _ => 0.5);
    private readonly double[] _cell = Padded(grid, _ => 0), _reach = Padded(grid, _ => 0), _reachSlope = Padded(grid, _ => 0);
    private readonly double[] _flux = Padded(grid, _ => 0), _fluxSlope = Padded(grid, _ => 0);
    private readonly double[] _conductance = Padded(grid, f => f.Kind == FaceKind.Bark ? BarkFactor : 1);
    private readonly double[] _inverseDepth = Padded(grid, f => 1 / f.Depth), _area = Padded(grid, f => f.Area);
    private readonly double[] _gr = Unscaled(grid, Axis.Radial), _gt = Unscaled(grid, Axis.Tangential), _gz = Unscaled(grid, Axis.Longitudinal);
    private IReferenceAir _air = new SteadyReferenceAir();
    private readonly int _crosswise = grid.Layout.OuterFaces.Count(f => f.Kind != FaceKind.End);
    private double _cap, _oak, _wall, _slope, _saturation, _vapor, _dryHumidity, _transfer, _w, _k, _k1, _k2;

    /// <summary>Begin a new solution in some air.</summary>
    public void Restart(IReferenceAir air)
    {
        _air = air;
        Array.Fill(_humidity, 0.5);
    }

    public override void Begin(double time, double step, ReadOnlySpan<double> state)
    {
        (var celsius, _saturation, _vapor, _dryHumidity) = _air.Mean(time, step);
        double kelvins = celsius + 273.15, scale = Math.Pow(BasicDensity / 560, -2.39);
        _cap = 30 - 0.1 * (celsius - 20);
        _oak = scale * 19.2e-4 * Math.Exp(-5280 / kelvins + 0.0115 * 15.5);
        _slope = -0.01162 + 33.034 / kelvins;
        _wall = scale * Math.Exp(-9.7127 - 4614.1 / kelvins + _slope * 10.5);
        _transfer = Convection / (1.2 * 1006) * 1.08 / (461.5 * kelvins) / BasicDensity * 100;
        _w = 1800 / (349 + 1.29 * celsius + 0.0135 * celsius * celsius);
        _k = 0.805 + 0.000736 * celsius - 0.00000273 * celsius * celsius;
        _k1 = 6.27 - 0.00938 * celsius - 0.000303 * celsius * celsius;
        _k2 = 1.91 + 0.0407 * celsius - 0.000293 * celsius * celsius;
    }

    public override void Evaluate(ReadOnlySpan<double> state)
    {
    }

    public override void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux)
    {
        var stride = grid.Stride(axis);
        ref var y = ref MemoryMarshal.GetReference(state);
        ref var g = ref MemoryMarshal.GetArrayDataReference(Conductance(axis));
        ref var f = ref MemoryMarshal.GetReference(flux);
        int n = state.Length - stride, i = 0;
        for (; i <= n - 4; i += 4)
        {
            Vector256<double> a = Vector256.LoadUnsafe(ref y, (nuint)i), b = Vector256.LoadUnsafe(ref y, (nuint)(i + stride));
            var d = axis == Axis.Longitudinal ? Longitudinal((a + b) * 0.5) : Transverse((a + b) * 0.5);
            (Vector256.LoadUnsafe(ref g, (nuint)i) * d * (b - a)).StoreUnsafe(ref f, (nuint)i);
        }

        for (; i < n; i++)
        {
            var middle = Vector256.Create((state[i] + state[i + stride]) * 0.5);
            flux[i] = Conductance(axis)[i] * (axis == Axis.Longitudinal ? Longitudinal(middle) : Transverse(middle))[0] * (state[i + stride] - state[i]);
        }

        for (; i < flux.Length; i++) flux[i] = 0;
    }

    public override void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own)
    {
        var stride = grid.Stride(axis);
        var g = Conductance(axis);
        int n = state.Length - stride, i = 0;
        for (; i <= n - 4; i += 4)
        {
            Vector256<double> a = Vector256.Create(state[i..]), b = Vector256.Create(state[(i + stride)..]), half = (b - a) * 0.5;
            Vector256<double> slope, d = axis == Axis.Longitudinal ? Longitudinal((a + b) * 0.5, out slope) : Transverse((a + b) * 0.5, out slope);
            var conductance = Vector256.Create(g.AsSpan(i));
            (conductance * (d + slope * half)).CopyTo(next[i..]);
            (conductance * (d - slope * half)).CopyTo(own[i..]);
        }

        for (; i < n; i++)
        {
            Vector256<double> middle = Vector256.Create((state[i] + state[i + stride]) * 0.5), slope;
            double d = (axis == Axis.Longitudinal ? Longitudinal(middle, out slope) : Transverse(middle, out slope))[0], half = slope[0] * (state[i + stride] - state[i]) * 0.5;
            (next[i], own[i]) = (g[i] * (d + half), g[i] * (d - half));
        }

        next[n..].Clear();
        own[n..].Clear();
    }

    public override void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        var cells = grid.OuterCells;
        for (var k = 0; k < _count; k++) _cell[k] = state[cells[k]];
        Reach(0, _crosswise, along: false);
        Reach(_crosswise, cells.Length, along: true);
        Balance();
        for (var iteration = 0; iteration < 40 && Iterate(iteration < 12 ? 1 : 0.5) > 1e-4; iteration++)
        {
        }

        Finish();
        _flux.AsSpan(0, _count).CopyTo(flux);
        _fluxSlope.AsSpan(0, _count).CopyTo(slope);
    }

    /// <summary>Diffusivity of the cell over its depth, and its slope.</summary>
    private void Reach(int start, int end, bool along)
    {
        for (var k = start; k < end; k += 4)
        {
            var moisture = Load(_cell, k);
            Vector256<double> slope, d = along ? Longitudinal(moisture, out slope) : Transverse(moisture, out slope), inverse = Load(_inverseDepth, k);
            Store(d * inverse, _reach, k);
            Store(slope * inverse, _reachSlope, k);
        }
    }

    /// <summary>
    /// The line of flux by surface humidity that passes through both means of the step: of a wet surface, and of a balanced one, whose humidity
    /// lies between the mean air's and the wood-weighted one as film and wood share the resistance.
    /// </summary>
    private void Balance()
    {
        var n = _count;
        var mean = Vector256.Create(_vapor / _saturation);
        Sorption(mean, out var slope);
        for (var k = 0; k < n; k += 4)
        {
            var open = Load(_conductance, k) * (_transfer * _saturation);
            var humidity = mean + (Vector256.Create(_dryHumidity) - mean) * open / (open + Load(_reach, k) * slope);
            var drive = Vector256.Create(_saturation - _vapor) / (Vector256<double>.One - humidity);
            Store(drive, _drive, k);
            Store(drive * humidity, _against, k);
        }
    }

    private double Iterate(double damp)
    {
        var worst = Vector256<double>.Zero;
        var n = _count;
        for (var k = 0; k < n; k += 4)
        {
            Vector256<double> h = Load(_humidity, k), reach = Load(_reach, k), conductance = Load(_conductance, k) * _transfer;
            var emc = Sorption(h, out var slope);
            var residual = reach * (Load(_cell, k) - emc) - conductance * (h * Load(_drive, k) - Load(_against, k));
            var next = Vector256.Min(Vector256.Max(h + damp * residual / (reach * slope + conductance * Load(_drive, k)), Vector256<double>.Zero), Vector256<double>.One);
            worst = Vector256.Max(worst, Vector256.Abs(next - h));
            Store(next, _humidity, k);
        }

        return Math.Max(Math.Max(worst[0], worst[1]), Math.Max(worst[2], worst[3]));
    }

    private void Finish()
    {
        var n = _count;
        for (var k = 0; k < n; k += 4)
        {
            Vector256<double> h = Load(_humidity, k), conductance = Load(_conductance, k) * _transfer, area = Load(_area, k);
            Store(area * conductance * (h * Load(_drive, k) - Load(_against, k)), _flux, k);
            var emc = Sorption(h, out var emcSlope);
            Vector256<double> reach = Load(_reach, k), open = conductance * Load(_drive, k);
            var q = open * (reach + Load(_reachSlope, k) * (Load(_cell, k) - emc)) / (open + reach * emcSlope);
            Store(Vector256.ConditionalSelect(Vector256.LessThan(h, Vector256<double>.One), area * q, Vector256<double>.Zero), _fluxSlope, k);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Sorption(Vector256<double> h, out Vector256<double> slope)
    {
        Vector256<double> x = h * _k, one = Vector256<double>.One, pair = x * (_k1 * _k2);
        Vector256<double> denominator = one + x * (pair + Vector256.Create(_k1)), free = one - x, two = x * _k1 + Vector256.Create(2.0);
        var r = one / (free * denominator);
        Vector256<double> r1 = r * denominator, r2 = r * free, b = two * r2;
        slope = (r1 * r1 - r2 * (Vector256.Create(_k1) - b * (Vector256.Create(_k1) + 2 * pair))) * (_w * _k);
        return (r1 + one - b) * _w;
    }

    private Vector256<double> Transverse(Vector256<double> m) => Transverse(m, out _);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Transverse(Vector256<double> m, out Vector256<double> slope)
    {
        var low = Vector256<double>.One;
        var cap = Vector256.Create(_cap);
        var clamped = Vector256.Min(Vector256.Max(m, low), cap);
        Vector256<double> oak = ExpSmall((clamped - Vector256.Create(15.5)) * 0.0115) * _oak, wall = Exp((clamped - Vector256.Create(10.5)) * _slope) * _wall;
        var limited = Vector256.LessThan(clamped, Vector256.Create(20.0)) & Vector256.LessThan(wall, oak);
        var d = Vector256.ConditionalSelect(limited, wall, oak);
        var inside = Vector256.GreaterThan(m, low) & Vector256.LessThan(m, cap);
        slope = Vector256.ConditionalSelect(inside, d * Vector256.ConditionalSelect(limited, Vector256.Create(_slope), Vector256.Create(0.0115)), Vector256<double>.Zero);
        return d;
    }

    private Vector256<double> Longitudinal(Vector256<double> m) => Longitudinal(m, out _);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Longitudinal(Vector256<double> m, out Vector256<double> slope)
    {
        var d = Transverse(m, out var across);
        var clamped = Vector256.Min(Vector256.Max(m, Vector256.Create(5.0)), Vector256.Create(25.5));
        var ratio = Exp((clamped - Vector256.Create(15.3)) * -0.0978) * (13 * 0.595480577);
        Vector256<double> low = Vector256.Create(3.0), high = Vector256.Create(20.0), held = Vector256.Min(Vector256.Max(ratio, low), high);
        var inside = Vector256.GreaterThan(ratio, low) & Vector256.LessThan(ratio, high);
        slope = across * held + Vector256.ConditionalSelect(inside, d * held * -0.0978, Vector256<double>.Zero);
        return d * held;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Exp(Vector256<double> y)
    {
        var x = y * 0.25;
        var p = Vector256.FusedMultiplyAdd(x, Vector256.Create(1.0 / 120), Vector256.Create(1.0 / 24));
        p = Vector256.FusedMultiplyAdd(x, p, Vector256.Create(1.0 / 6));
        p = Vector256.FusedMultiplyAdd(x, p, Vector256.Create(0.5));
        p = Vector256.FusedMultiplyAdd(x, p, Vector256<double>.One);
        p = Vector256.FusedMultiplyAdd(x, p, Vector256<double>.One);
        p *= p;
        return p * p;
    }

    /// <summary>For |y| ≤ 0.17: relative error below 4e-5 × y⁴.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> ExpSmall(Vector256<double> y)
    {
        var p = Vector256.FusedMultiplyAdd(y, Vector256.Create(1.0 / 24), Vector256.Create(1.0 / 6));
        p = Vector256.FusedMultiplyAdd(y, p, Vector256.Create(0.5));
        p = Vector256.FusedMultiplyAdd(y, p, Vector256<double>.One);
        return Vector256.FusedMultiplyAdd(y, p, Vector256<double>.One);
    }

    private double[] Conductance(Axis axis) => axis switch { Axis.Radial => _gr, Axis.Tangential => _gt, _ => _gz };

    /// <summary>The comparison problems know one transverse diffusivity, so the product's anisotropy is taken out again.</summary>
    private static double[] Unscaled(LaneGrid grid, Axis axis) => grid.Layout.Conductance(axis);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Load(double[] from, int k) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(from), (nuint)k);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(Vector256<double> value, double[] to, int k) => value.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(to), (nuint)k);

    /// <summary>One value per outer face, with room for whole vectors at the end of each kind.</summary>
    private static double[] Padded(LaneGrid grid, Func<OuterFace, double> value)
    {
        OuterFace[] faces = grid.Layout.OuterFaces;
        return [.. faces.Select(value), .. Enumerable.Repeat(value(faces[^1]), 4)];
    }
}
