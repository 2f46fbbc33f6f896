using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Rickyard.Core.Drying;

/// <summary>
/// One lane's diffusivities at its present temperature, by moisture: at each node the potential ∫D dM and D itself, across and along the grain.
/// Fluxes are differences of potentials, which keeps them exact where D changes fast between two cells (physics.md, N1).
/// </summary>
internal sealed class MobilityRow
{
    /// <summary>Two values a node: potential [m² s⁻¹] and diffusivity [m² s⁻¹] across the grain.</summary>
    internal double[] Across { get; } = new double[2 * MobilityNodes.Count + 2];

    /// <summary>The same along the grain.</summary>
    internal double[] Along { get; } = new double[2 * MobilityNodes.Count + 2];

    /// <summary>Look one moisture up: the plain twin of the four at a time.</summary>
    /// <param name="values"><see cref="Across"/> or <see cref="Along"/>.</param>
    /// <param name="moisture">[kg kg⁻¹]</param>
    /// <param name="diffusivity">[m² s⁻¹]</param>
    /// <returns>Potential. [m² s⁻¹]</returns>
    internal static double At(double[] values, double moisture, out double diffusivity)
    {
        var position = MobilityNodes.Position(moisture, out var width);
        var node = (int)position;
        var into = position - node;
        double here = values[2 * node + 1], rise = values[2 * node + 3] - here;
        diffusivity = here + into * rise;
        return values[2 * node] + width * into * (here + 0.5 * into * rise);
    }

    /// <summary>Look four moistures up, each in its own row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> At(
        double[] first, double[] second, double[] third, double[] fourth, Vector256<double> moisture, out Vector256<double> diffusivity)
    {
        var position = MobilityNodes.Position(moisture, out var width);
        var node = Vector256.Floor(position);
        var into = position - node;
        Transpose(Pair(first, node[0]), Pair(second, node[1]), Pair(third, node[2]), Pair(fourth, node[3]), out var potential, out var here, out var next);
        var rise = next - here;
        diffusivity = here + into * rise;
        return potential + width * into * (here + 0.5 * into * rise);
    }

    /// <summary>Potential and diffusivity at a node and at the one after it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Pair(double[] values, double node) => Vector256.LoadUnsafe(ref values[2 * (int)node]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Transpose(
        Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d,
        out Vector256<double> potential, out Vector256<double> here, out Vector256<double> next)
    {
        if (Avx.IsSupported)
        {
            Vector256<double> high = Avx.UnpackHigh(a, b), higher = Avx.UnpackHigh(c, d);
            potential = Avx.Permute2x128(Avx.UnpackLow(a, b), Avx.UnpackLow(c, d), 0x20);
            here = Avx.Permute2x128(high, higher, 0x20);
            next = Avx.Permute2x128(high, higher, 0x31);
            return;
        }

        potential = Vector256.Create(a[0], b[0], c[0], d[0]);
        here = Vector256.Create(a[1], b[1], c[1], d[1]);
        next = Vector256.Create(a[3], b[3], c[3], d[3]);
    }
}
