using System.Numerics.Tensors;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// One step of the linearly implicit Euler method, extrapolated once: a whole step and two half steps with the same Jacobian give second
/// order, and their difference the error (Deuflhard 1985, SIAM Review 27: 505; physics.md, N2). It keeps its order when the Jacobian
/// is only approximate, and unlike the usual two-stage Rosenbrock methods no stage overshoots the balance of a fast cell. What leaves the cells is
/// booked face by face, so that water is conserved to rounding. Allocates nothing after construction.
/// </summary>
public sealed class ImplicitStepper
{
    private readonly LaneGrid _grid;
    private readonly TransportLaw _law;
    private readonly FactoredSystem _system;
    private readonly double[] _flux, _derivative, _whole, _half, _middle, _outer, _slopes, _wholeOut, _least, _most, _filled;

    /// <summary>A stepper for one law on one grid; its <see cref="State"/> starts at zero.</summary>
    public ImplicitStepper(LaneGrid grid, TransportLaw law)
    {
        (_grid, _law, _system) = (grid, law, new(grid));
        var n = grid.Count;
        (State, Next, Error) = (new double[n], new double[n], new double[n]);
        (_flux, _derivative, _whole, _half, _middle) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        (_least, _most, _filled) = (new double[grid.Lanes], new double[grid.Lanes], new double[grid.Lanes]);
        var outer = grid.OuterCells.Length;
        (_outer, _slopes, _wholeOut, Outflow) = (new double[outer], new double[outer], new double[outer], new double[outer]);
    }

    /// <summary>Cell values, interleaved.</summary>
    public double[] State { get; private set; }

    /// <summary>Result of the last <see cref="Step"/>, until <see cref="Accept"/> makes it the state.</summary>
    public double[] Next { get; private set; }

    /// <summary>Difference to the embedded first-order result of the last step.</summary>
    public double[] Error { get; }

    /// <summary>What left through each outer face in the last step. [quantity m³]</summary>
    public double[] Outflow { get; }

    /// <summary>Compute <see cref="Next"/>, <see cref="Error"/> and <see cref="Outflow"/>; the law must have begun this step.</summary>
    /// <param name="step">Length of the step. [s]</param>
    public void Step(double step)
    {
        Derivative(State);
        _system.SetJacobian(_law, State, _slopes);
        Array.Clear(_wholeOut);
        Array.Clear(Outflow);

        for (var lane = 0; lane < _least.Length; lane++) (_least[lane], _most[lane]) = _law.Reach(lane);

        _system.Factor(step);
        Increment(step, _whole, _wholeOut);
        Contain(_whole, _wholeOut);

        _system.Factor(step / 2);
        Increment(step / 2, _half, Outflow);
        Contain(_half, Outflow);
        TensorPrimitives.Add(State, _half, _middle);
        Derivative(_middle);
        Increment(step / 2, _derivative, Outflow);

        Extrapolate();
        if (_law.Answers(_outer)) FillSurroundings(step);
    }

    /// <summary>Make the result of the last step the state.</summary>
    public void Accept() => (State, Next) = (Next, State);

    /// <summary>Rate of change of every cell, and the outer fluxes, at a state. [quantity s⁻¹], [quantity m³ s⁻¹]</summary>
    private void Derivative(double[] state)
    {
        _law.Evaluate(state);
        Array.Clear(_derivative);
        AddFluxes(Axis.Radial, state);
        AddFluxes(Axis.Tangential, state);
        AddFluxes(Axis.Longitudinal, state);
        _law.OuterFluxes(state, _outer, _slopes);
        for (var k = 0; k < _outer.Length; k++) _derivative[_grid.OuterCells[k]] -= _outer[k];
        TensorPrimitives.Multiply(_derivative, _grid.InverseVolumes, _derivative);
    }

    private void AddFluxes(Axis axis, double[] state)
    {
        if (_grid.Layout.CountAlong(axis) == 1) return;
        _law.FaceFluxes(axis, state, _flux);
        var stride = _grid.Stride(axis);
        TensorPrimitives.Add(_derivative, _flux, _derivative);
        TensorPrimitives.Subtract(_derivative.AsSpan(stride), _flux.AsSpan(0, _flux.Length - stride), _derivative.AsSpan(stride));
    }

    /// <summary>One linearly implicit Euler increment from the present derivative; its outflow is added.</summary>
    private void Increment(double step, double[] increment, double[] outflow)
    {
        TensorPrimitives.Multiply(_derivative, step, increment);
        TensorPrimitives.MultiplyAdd(_outer, step, outflow, outflow);
        _system.Solve(increment, outflow);
    }

    /// <summary>
    /// Let so much less through an outer face that it does not carry its cell beyond the reach of the surroundings. A thin cell at the pith that is wet at the
    /// start of a step and dry long before its end would otherwise go on giving off water, far below nothing, and the extrapolation carry it as far above.
    /// </summary>
    private void Contain(double[] increment, double[] outflow)
    {
        for (var k = 0; k < outflow.Length; k++)
        {
            int cell = _grid.OuterCells[k], lane = k % _least.Length;
            double reached = State[cell] + increment[cell], given = outflow[k] * _grid.InverseVolumes[cell];
            var back = given > 0
                ? Math.Clamp(_least[lane] - reached, 0, given)
                : Math.Clamp(_most[lane] - reached, given, 0);
            increment[cell] += back;
            outflow[k] -= back * _grid.Volumes[cell];
        }
    }

    /// <summary>
    /// Let the surroundings fill with what the faces gave off in the step, and the cells keep what those then would not have taken: the one unknown that all faces
    /// of a member share, solved as a border of the system (physics.md, N3).
    /// </summary>
    private void FillSurroundings(double step)
    {
        FindAnswer(step);
        for (var lane = 0; lane < _filled.Length; lane++) _filled[lane] = _law.Filled(lane, step, SumOf(Outflow, lane), -SumOf(_wholeOut, lane));
        Fill();
    }

    /// <summary>What a lone split's faces gave off in the last step, and how much less that is per unit by which surroundings it shares with others fill. [quantity m³], [quantity m³ per unit]</summary>
    internal (double Given, double Keeping) Answer(double step, ReadOnlySpan<double> answers)
    {
        answers.CopyTo(_outer);
        FindAnswer(step);
        return (SumOf(Outflow, 0), -SumOf(_wholeOut, 0));
    }

    /// <summary>Let the shared surroundings of a lone split fill by so much over the last step. [unit]</summary>
    internal void Fill(double filled)
    {
        _filled[0] = filled;
        Fill();
    }

    private void FindAnswer(double step)
    {
        Array.Clear(_derivative);
        for (var k = 0; k < _outer.Length; k++) _derivative[_grid.OuterCells[k]] += step * _outer[k] * _grid.InverseVolumes[_grid.OuterCells[k]];
        TensorPrimitives.Multiply(_outer, -step, _wholeOut);
        _system.Solve(_derivative, _wholeOut);
    }

    private void Fill()
    {
        for (var i = 0; i < Next.Length; i++) Next[i] += _filled[i % _filled.Length] * _derivative[i];
        for (var k = 0; k < Outflow.Length; k++) Outflow[k] += _filled[k % _filled.Length] * _wholeOut[k];
    }

    private double SumOf(double[] faces, int lane)
    {
        double sum = 0;
        for (var k = lane; k < faces.Length; k += _filled.Length) sum += faces[k];
        return sum;
    }

    /// <summary>Twice the two half steps minus the whole one.</summary>
    private void Extrapolate()
    {
        TensorPrimitives.Add(_half, _derivative, _half);
        TensorPrimitives.Subtract(_half, _whole, Error);
        TensorPrimitives.Add(_half, Error, _half);
        for (var k = 0; k < Outflow.Length; k++) Outflow[k] = 2 * Outflow[k] - _wholeOut[k];
        Contain(_half, Outflow);
        TensorPrimitives.Add(State, _half, Next);
    }
}
