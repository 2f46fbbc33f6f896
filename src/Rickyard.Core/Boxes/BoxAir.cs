using Rickyard.Core.Air;

namespace Rickyard.Core.Boxes;

/// <summary>What is in a box beside the charge: its air, as masses so that none is lost, and its walls.</summary>
/// <param name="DryAir">[kg]</param>
/// <param name="Vapor">[kg]</param>
/// <param name="Kelvins">Of the air. [K]</param>
/// <param name="WallKelvins">Of the inside face of the walls. [K]</param>
internal readonly record struct BoxAir(double DryAir, double Vapor, double Kelvins, double WallKelvins)
{
    /// <summary>Air of a box that has stood open outside.</summary>
    internal static BoxAir Of(in Outside outside, double volume, double pressure) => new(
        DryAirIn(volume, outside.Kelvins, outside.VaporPressure, pressure), VaporIn(volume, outside.Kelvins, outside.VaporPressure), outside.Kelvins, outside.Kelvins);

    /// <summary>Vapour over dry air.</summary>
    internal double Ratio => Vapor / DryAir;

    /// <summary>Partial pressure of the vapour at a total pressure. [Pa]</summary>
    internal double VaporPressure(double pressure) => Psychrometrics.VaporPressure(Ratio, pressure);

    /// <summary>Heat content of air and vapour. [J]</summary>
    internal double Enthalpy => DryAir * Psychrometrics.Enthalpy(Kelvins, Ratio);

    internal static double DryAirIn(double volume, double kelvins, double vapor, double pressure) => (pressure - vapor) * volume / (AirConstants.DryAirGasConstant * kelvins);

    internal static double VaporIn(double volume, double kelvins, double vapor) => vapor * volume / (AirConstants.VaporGasConstant * kelvins);
}
