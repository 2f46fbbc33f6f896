using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Rickyard.Core.Drying;

/// <summary>What the bodies of a <see cref="LaneGrid"/> meet, as vectors: one value a member, or the same four times for a lone split.</summary>
internal readonly struct LaneAir
{
    private readonly Vector256<double> _scale, _k, _k1, _pair;

    internal LaneAir(LaneBody[] bodies)
    {
        Saturation = Of(bodies, body => body.Saturation);
        Vapor = Of(bodies, body => body.VaporPressure);
        Film = Of(bodies, body => body.FilmConductance);
        InverseDensity = Of(bodies, body => 1 / body.Wood.BasicDensity);
        Density = Of(bodies, body => body.Wood.BasicDensity);
        FiberSaturation = Of(bodies, body => body.Isotherm.Saturation);
        _scale = Of(bodies, body => body.Isotherm.Scale);
        _k = Of(bodies, body => body.Isotherm.K);
        _k1 = Of(bodies, body => body.Isotherm.K1);
        _pair = Of(bodies, body => body.Isotherm.K1 * body.Isotherm.K2);
    }

    /// <summary>Saturation pressure at the wood. [Pa]</summary>
    internal Vector256<double> Saturation { get; }

    /// <summary>Vapour pressure beside it. [Pa]</summary>
    internal Vector256<double> Vapor { get; }

    /// <summary>Vapour conductance of the film. [kg m⁻² s⁻¹ Pa⁻¹]</summary>
    internal Vector256<double> Film { get; }

    /// <summary>One over basic density. [m³ kg⁻¹]</summary>
    internal Vector256<double> InverseDensity { get; }

    /// <summary>Basic density. [kg m⁻³]</summary>
    internal Vector256<double> Density { get; }

    /// <summary>Moisture at humidity 1. [kg kg⁻¹]</summary>
    internal Vector256<double> FiberSaturation { get; }

    /// <summary>Equilibrium moisture and its slope: <see cref="Wood.SorptionIsotherm"/>, four at a time and with one division.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector256<double> Moisture(Vector256<double> humidity, out Vector256<double> slope)
    {
        Vector256<double> x = _k * humidity, one = Vector256<double>.One, pair = _pair * x;
        Vector256<double> denominator = one + x * (_k1 + pair), free = one - x, numerator = x * (_k1 + pair + pair);
        var inverse = one / (free * denominator);
        Vector256<double> overFree = inverse * denominator, overDenominator = inverse * free, held = numerator * overDenominator;
        slope = _scale * _k * (overFree * overFree + overDenominator * (_k1 + 4 * pair - held * (_k1 + pair + pair)));
        return _scale * (x * overFree + held);
    }

    private static Vector256<double> Of(LaneBody[] bodies, Func<LaneBody, double> value) => bodies.Length == 1
        ? Vector256.Create(value(bodies[0]))
        : Vector256.Create(value(bodies[0]), value(bodies[1]), value(bodies[2]), value(bodies[3]));
}
