using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// The linear systems of a step, (I − g J) x = b, with J taken as the sum of its three one-dimensional parts and the matrix as the
/// product (I − g J_r)(I − g J_θ)(I − g J_z): approximate matrix factorisation (physics.md, N3).
/// </summary>
internal sealed class FactoredSystem
{
    private readonly LaneGrid _grid;
    private readonly TridiagonalLines[] _axes;
    private readonly double[] _outerSlopes;
    private double _g;

    /// <summary>Work arrays for one grid.</summary>
    internal FactoredSystem(LaneGrid grid)
    {
        _grid = grid;
        _axes = [.. Enum.GetValues<Axis>().Select(axis => new TridiagonalLines(grid, axis))];
        _outerSlopes = new double[grid.OuterCells.Length];
    }

    /// <summary>Take the Jacobian of a law at a state at which it has been evaluated.</summary>
    /// <param name="law">Gives the slopes between cells.</param>
    /// <param name="state">Cell values.</param>
    /// <param name="outerSlopes">Derivative of the outflow through each outer face by the cell behind it. [m³ s⁻¹]</param>
    internal void SetJacobian(TransportLaw law, ReadOnlySpan<double> state, ReadOnlySpan<double> outerSlopes)
    {
        outerSlopes.CopyTo(_outerSlopes);
        foreach (var axis in _axes) axis.SetJacobian(law, state, _grid, outerSlopes);
    }

    /// <summary>Eliminate for I − g J. <paramref name="g"/> is the step times the method's γ. [s]</summary>
    internal void Factor(double g)
    {
        _g = g;
        foreach (var axis in _axes) axis.Factor(g);
    }

    /// <summary>Solve in place; add to <paramref name="outflow"/>, for each outer face, what leaves through it in the sweep along its normal. [quantity m³]</summary>
    internal void Solve(Span<double> x, Span<double> outflow)
    {
        foreach (var axis in _axes)
        {
            axis.Solve(x);
            for (var k = axis.Start; k < axis.End; k++) outflow[k] += _g * _outerSlopes[k] * x[_grid.OuterCells[k]];
        }
    }
}
