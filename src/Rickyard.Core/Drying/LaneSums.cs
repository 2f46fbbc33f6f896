using System.Runtime.Intrinsics;

namespace Rickyard.Core.Drying;

/// <summary>Running sums over faces, one vector element a member; of a lone split the four elements belong together.</summary>
internal struct LaneSums
{
    private Vector256<double> _vapor, _byVapor, _bySaturation, _surfaceVapor, _weight, _drip;

    /// <summary>Add four faces.</summary>
    /// <param name="flux">Outflow. [m³ s⁻¹]</param>
    /// <param name="passing">Area times conductance times the part by which the flux follows the pressures. [m³ s⁻¹ Pa⁻¹]</param>
    /// <param name="humidity">Of the surface.</param>
    /// <param name="drip">Of the outflow, dew that runs off. [m³ s⁻¹]</param>
    /// <param name="air">The air.</param>
    internal void Add(Vector256<double> flux, Vector256<double> passing, Vector256<double> humidity, Vector256<double> drip, in LaneAir air)
    {
        var size = Vector256.Abs(flux);
        _vapor += flux * air.Density;
        _byVapor -= passing * air.Density;
        _bySaturation += passing * humidity * air.Density;
        _surfaceVapor += size * humidity * air.Saturation;
        _weight += size;
        _drip += drip * air.Density;
    }

    internal readonly SurfaceSums Of(int lane, int lanes) =>
        new(Pick(_vapor, lane, lanes), Pick(_byVapor, lane, lanes), Pick(_bySaturation, lane, lanes), Pick(_surfaceVapor, lane, lanes), Pick(_weight, lane, lanes), Pick(_drip, lane, lanes));

    private static double Pick(Vector256<double> sum, int lane, int lanes) => lanes == 1 ? Vector256.Sum(sum) : sum[lane];
}
