using System.Runtime.CompilerServices;

namespace Rickyard.Core.Drying;

/// <summary>
/// One lane's diffusivities at its present temperature, by moisture: at each node the potential ∫D dM and D itself, across and along the grain.
/// Fluxes are differences of potentials, which keeps them exact where D changes fast between two cells (physics.md, N1).
/// </summary>
internal sealed class MobilityRow
{
    /// <summary>Four values a node: potential across, diffusivity across, potential along, diffusivity along.</summary>
    internal double[] Values { get; } = new double[4 * MobilityNodes.Count];

    /// <summary>Potential [m² s⁻¹] and diffusivity [m² s⁻¹] across the grain.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double Across(double moisture, out double diffusivity) => At(moisture, 0, out diffusivity);

    /// <summary>Potential [m² s⁻¹] and diffusivity [m² s⁻¹] along the grain.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double Along(double moisture, out double diffusivity) => At(moisture, 2, out diffusivity);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal double At(double moisture, int offset, out double diffusivity)
    {
        var position = MobilityNodes.Position(moisture, out var width);
        var node = (int)position;
        var into = position - node;
        var at = Values.AsSpan(4 * node + offset, 6);
        var rise = at[5] - at[1];
        diffusivity = at[1] + into * rise;
        return at[0] + width * into * (at[1] + 0.5 * into * rise);
    }
}
