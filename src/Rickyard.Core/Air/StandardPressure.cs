using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>Pressure of the standard atmosphere (ASHRAE 2017, ch. 1, eq. 3; physics.md, eq. A3).</summary>
public static class StandardPressure
{
    /// <summary>Lowest elevation the formula serves. [m]</summary>
    public const double LowestElevation = -5000;

    /// <summary>Highest elevation the formula serves. [m]</summary>
    public const double HighestElevation = 11000;

    /// <summary>Pressure at an elevation above (or, negative, below) the sea.</summary>
    /// <param name="metres">Elevation, -5000 to 11000. [m]</param>
    public static Pressure AtElevation(double metres) => metres is >= LowestElevation and <= HighestElevation
        ? Pressure.FromPascals(101325 * Math.Pow(1 - 2.25577e-5 * metres, 5.2559))
        : throw new ArgumentOutOfRangeException(nameof(metres), metres, "Elevation must be -5000 to 11000 m.");
}
