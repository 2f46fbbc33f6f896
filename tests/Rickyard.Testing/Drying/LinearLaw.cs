using Rickyard.Core.Drying;
using Rickyard.Core.Splits;

namespace Rickyard.Testing.Drying;

/// <summary>
/// Diffusion as the textbooks solve it: one constant diffusivity, and through each outer face a flux h (surface − balance) solved together with the half
/// cell behind it. h = 0 closes a face, infinity holds its surface at the balance.
/// </summary>
/// <param name="grid">Grids; on log coordinates diffusivity carries their anisotropy.</param>
/// <param name="diffusivity">Mean across the grain, and along it. [m² s⁻¹]</param>
/// <param name="balance">Value the surroundings draw the surface to.</param>
/// <param name="conductance">h of a face. [m s⁻¹]</param>
public sealed class LinearLaw(LaneGrid grid, double diffusivity, double balance, Func<OuterFace, double> conductance) : TransportLaw
{
    private readonly double[] _outer = [.. Enumerable.Range(0, grid.OuterCells.Length).Select(k =>
        grid.OuterAreas[k] / (1 / conductance(grid.Layout.OuterFaces[k / grid.Lanes]) + 1 / (diffusivity * grid.OuterInverseDepths[k])))];

    /// <inheritdoc/>
    public override void Begin(double time, double step, ReadOnlySpan<double> state)
    {
    }

    /// <inheritdoc/>
    public override void Evaluate(ReadOnlySpan<double> state)
    {
    }

    /// <inheritdoc/>
    public override void FaceFluxes(Axis axis, ReadOnlySpan<double> state, Span<double> flux)
    {
        var (geometry, stride) = (grid.Conductance(axis), grid.Stride(axis));
        flux.Clear();
        for (var i = 0; i + stride < state.Length; i++) flux[i] = geometry[i] * diffusivity * (state[i + stride] - state[i]);
    }

    /// <inheritdoc/>
    public override void FaceSlopes(Axis axis, ReadOnlySpan<double> state, Span<double> next, Span<double> own)
    {
        var geometry = grid.Conductance(axis);
        for (var i = 0; i < state.Length; i++) next[i] = own[i] = geometry[i] * diffusivity;
    }

    /// <inheritdoc/>
    public override void OuterFluxes(ReadOnlySpan<double> state, Span<double> flux, Span<double> slope)
    {
        for (var k = 0; k < _outer.Length; k++) (flux[k], slope[k]) = (_outer[k] * (state[grid.OuterCells[k]] - balance), _outer[k]);
    }
}
