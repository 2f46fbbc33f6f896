using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Rickyard.Core.Drying;

/// <summary>
/// The moisture contents at which diffusivities are tabulated: fine where they bend, coarse where only free water matters. Diffusivity is
/// linear between nodes and its integral, the potential, is exact for that.
/// </summary>
internal static class MobilityNodes
{
    /// <summary>Up to here nodes are fine. [kg kg⁻¹]</summary>
    internal const double FineEnd = 0.375;

    /// <summary>Fine nodes per unit of moisture.</summary>
    internal const double FinePerUnit = 256;

    /// <summary>Coarse nodes per unit of moisture.</summary>
    internal const double CoarsePerUnit = 32;

    /// <summary>Nodes in all, up to a moisture of 3.5.</summary>
    internal const int Count = (int)(FineEnd * FinePerUnit) + 100 + 2;

    private const double Last = Count - 1.001;

    private const double FineCount = FineEnd * FinePerUnit;

    /// <summary>Moisture at a node. [kg kg⁻¹]</summary>
    internal static double Moisture(int node) => node <= FineCount ? node / FinePerUnit : FineEnd + (node - FineCount) / CoarsePerUnit;

    /// <summary>Positions of four moistures, as <see cref="Position(double, out double)"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> Position(Vector256<double> moisture, out Vector256<double> width)
    {
        var end = Vector256.Create(FineEnd);
        width = Vector256.ConditionalSelect(Vector256.LessThan(moisture, end), Vector256.Create(1 / FinePerUnit), Vector256.Create(1 / CoarsePerUnit));
        var position = Vector256.Min(moisture, end) * FinePerUnit + Vector256.Max(moisture - end, Vector256<double>.Zero) * CoarsePerUnit;
        return Vector256.Min(Vector256.Max(position, Vector256<double>.Zero), Vector256.Create(Last));
    }

    /// <summary>Position of a moisture among the nodes, and the width of its interval. Values beyond the table are held at its ends.</summary>
    internal static double Position(double moisture, out double width)
    {
        var fine = moisture < FineEnd;
        width = fine ? 1 / FinePerUnit : 1 / CoarsePerUnit;
        return Math.Clamp(fine ? moisture * FinePerUnit : FineCount + (moisture - FineEnd) * CoarsePerUnit, 0, Last);
    }
}
