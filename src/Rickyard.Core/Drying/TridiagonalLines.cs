using System.Numerics.Tensors;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// I − g J for the lines of cells along one axis: the one-dimensional part of the Jacobian and its elimination. Lines run side by side
/// in memory, so all of them are eliminated at once, one vector of lines after another. Only along the grain of a lone split do
/// neighbours follow each other directly; there the work is done on transposed copies.
/// </summary>
internal sealed class TridiagonalLines
{
    private readonly int _stride, _length, _count;
    private readonly double[] _next, _previous, _own, _lower, _upper, _inverse, _diagonal;
    private readonly double[]? _turned, _turnedDiagonal, _turnedNext, _turnedPrevious;
    private readonly Axis _axis;

    internal TridiagonalLines(LaneGrid grid, Axis axis)
    {
        (_axis, _stride, _length, _count) = (axis, grid.Stride(axis), grid.Layout.CountAlong(axis), grid.Count);
        (Start, End) = grid.OuterRange(axis);
        (_diagonal, _next, _previous, _own) = (new double[_count], new double[_count], new double[_count], new double[_count]);
        (_lower, _upper, _inverse) = (new double[_count], new double[_count], new double[_count]);
        if (_stride > 1) return;
        _stride = _count / _length;
        (_turned, _turnedDiagonal, _turnedNext, _turnedPrevious) = (new double[_count], new double[_count], new double[_count], new double[_count]);
    }

    /// <summary>First outer face that looks along this axis.</summary>
    internal int Start { get; }

    /// <summary>One past the last.</summary>
    internal int End { get; }

    /// <summary>Take the slopes between cells and at the outer faces of this axis.</summary>
    internal void SetJacobian(TransportLaw law, ReadOnlySpan<double> state, LaneGrid grid, ReadOnlySpan<double> outerSlopes)
    {
        law.FaceSlopes(_axis, state, _next, _own);
        Assemble(grid.InverseVolumes, grid.Stride(_axis));
        for (var k = Start; k < End; k++) _diagonal[grid.OuterCells[k]] -= outerSlopes[k] * grid.InverseVolumes[grid.OuterCells[k]];
        if (_turned is null) return;
        Turn(_diagonal, _turnedDiagonal);
        Turn(_next, _turnedNext);
        Turn(_previous, _turnedPrevious);
    }

    /// <summary>Eliminate downward for I − g J.</summary>
    internal void Factor(double g)
    {
        double[] diagonal = _turnedDiagonal ?? _diagonal, next = _turnedNext ?? _next, previous = _turnedPrevious ?? _previous;
        var block = _stride * _length;
        for (var start = 0; start < _count; start += block)
        {
            FactorFirst(g, start, diagonal, next);
            for (var row = 1; row < _length; row++) FactorRow(g, start + row * _stride, diagonal, next, previous);
        }
    }

    /// <summary>Forward and back substitution in place.</summary>
    internal void Solve(Span<double> x)
    {
        if (_turned is null)
        {
            SolveRows(x);
            return;
        }

        Turn(x, _turned);
        SolveRows(_turned);
        TurnBack(_turned, x);
    }

    private void Assemble(double[] inverseVolumes, int stride)
    {
        int n = _count, s = Math.Min(stride, n);
        TensorPrimitives.Negate(_own, _diagonal);
        TensorPrimitives.Subtract(_diagonal.AsSpan(s), _next.AsSpan(0, n - s), _diagonal.AsSpan(s));
        TensorPrimitives.Multiply(_diagonal, inverseVolumes, _diagonal);
        TensorPrimitives.Multiply(_own.AsSpan(0, n - s), inverseVolumes.AsSpan(s), _previous.AsSpan(s));
        TensorPrimitives.Multiply(_next, inverseVolumes, _next);
    }

    /// <summary>Line by line to row by row.</summary>
    private void Turn(ReadOnlySpan<double> lines, Span<double> rows)
    {
        for (var line = 0; line < _stride; line++)
        {
            var cells = lines.Slice(line * _length, _length);
            var at = line;
            foreach (var value in cells)
            {
                rows[at] = value;
                at += _stride;
            }
        }
    }

    private void TurnBack(ReadOnlySpan<double> rows, Span<double> lines)
    {
        for (var line = 0; line < _stride; line++)
        {
            var cells = lines.Slice(line * _length, _length);
            var at = line;
            foreach (ref var value in cells)
            {
                value = rows[at];
                at += _stride;
            }
        }
    }

    private void FactorFirst(double g, int start, double[] diagonal, double[] next)
    {
        for (var i = start; i < start + _stride; i++)
        {
            var inverse = 1 / (1 - g * diagonal[i]);
            (_lower[i], _inverse[i], _upper[i]) = (0, inverse, -g * next[i] * inverse);
        }
    }

    private void FactorRow(double g, int start, double[] diagonal, double[] next, double[] previous)
    {
        int i = start, end = start + _stride;
        for (; i <= end - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            var lower = Vector256.LoadUnsafe(ref previous[i]) * -g;
            var pivot = Vector256<double>.One - Vector256.LoadUnsafe(ref diagonal[i]) * g - lower * Vector256.LoadUnsafe(ref _upper[i - _stride]);
            var inverse = Vector256<double>.One / pivot;
            (lower * inverse).StoreUnsafe(ref _lower[i]);
            inverse.StoreUnsafe(ref _inverse[i]);
            (Vector256.LoadUnsafe(ref next[i]) * inverse * -g).StoreUnsafe(ref _upper[i]);
        }

        for (; i < end; i++)
        {
            var lower = -g * previous[i];
            var inverse = 1 / (1 - g * diagonal[i] - lower * _upper[i - _stride]);
            (_lower[i], _inverse[i], _upper[i]) = (lower * inverse, inverse, -g * next[i] * inverse);
        }
    }

    private void SolveRows(Span<double> x)
    {
        var block = _stride * _length;
        for (var start = 0; start < x.Length; start += block)
        {
            ScaleRow(x, start);
            for (var row = 1; row < _length; row++) ForwardRow(x, start + row * _stride);
            for (var row = _length - 2; row >= 0; row--) BackRow(x, start + row * _stride);
        }
    }

    private void ScaleRow(Span<double> x, int start) =>
        TensorPrimitives.Multiply(x.Slice(start, _stride), _inverse.AsSpan(start, _stride), x.Slice(start, _stride));

    private void ForwardRow(Span<double> x, int start)
    {
        ref var v = ref MemoryMarshal.GetReference(x);
        ref var inverse = ref MemoryMarshal.GetArrayDataReference(_inverse);
        ref var lower = ref MemoryMarshal.GetArrayDataReference(_lower);
        int i = start, end = start + _stride;
        for (; i <= end - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            var above = Vector256.LoadUnsafe(ref v, (nuint)(i - _stride));
            var scaled = Vector256.LoadUnsafe(ref v, (nuint)i) * Vector256.LoadUnsafe(ref inverse, (nuint)i);
            (scaled - Vector256.LoadUnsafe(ref lower, (nuint)i) * above).StoreUnsafe(ref v, (nuint)i);
        }

        for (; i < end; i++) x[i] = _inverse[i] * x[i] - _lower[i] * x[i - _stride];
    }

    private void BackRow(Span<double> x, int start)
    {
        ref var v = ref MemoryMarshal.GetReference(x);
        ref var upper = ref MemoryMarshal.GetArrayDataReference(_upper);
        int i = start, end = start + _stride;
        for (; i <= end - Vector256<double>.Count; i += Vector256<double>.Count)
        {
            var below = Vector256.LoadUnsafe(ref v, (nuint)(i + _stride));
            (Vector256.LoadUnsafe(ref v, (nuint)i) - Vector256.LoadUnsafe(ref upper, (nuint)i) * below).StoreUnsafe(ref v, (nuint)i);
        }

        for (; i < end; i++) x[i] -= _upper[i] * x[i + _stride];
    }
}
