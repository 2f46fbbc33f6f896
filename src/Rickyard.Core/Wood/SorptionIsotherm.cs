namespace Rickyard.Core.Wood;

/// <summary>
/// Hailwood-Horrobin two-hydrate isotherm of wood at one temperature (Wood Handbook FPL-GTR-282, eq. 4-5, metric constants;
/// physics.md, eq. S1). Moisture as a fraction, activity 0 to 1. From the lowest printed temperature to 110 °C the constants are polynomials
/// in temperature; outside, they are held at the end values (the stated rule for the edges). The polynomials must not be followed into the
/// cold: K2 turns negative below -37 °C and the fibre saturation point would fall from 29 to 23 % between 0 and -40 °C.
/// </summary>
/// <param name="Scale">18/W: moisture per hydrate unit. [kg kg⁻¹]</param>
/// <param name="K">Equilibrium constant of dissolved water.</param>
/// <param name="K1">Equilibrium constant of the first hydrate.</param>
/// <param name="K2">Equilibrium constant of the second hydrate.</param>
public readonly record struct SorptionIsotherm(double Scale, double K, double K1, double K2)
{
    /// <summary>Lowest temperature at which the constants vary: the first row of the source's table, 30 °F. [°C]</summary>
    public const double LowestCelsius = -10.0 / 9;

    /// <summary>Highest temperature at which the constants vary; the last row of the source's table is 98.9 °C, beyond is extrapolation. [°C]</summary>
    public const double HighestCelsius = 110;

    /// <summary>The isotherm at a temperature, held constant outside -1.1 to 110 °C.</summary>
    /// <param name="celsius">Temperature. [°C]</param>
    public static SorptionIsotherm At(double celsius)
    {
        var t = Math.Clamp(celsius, LowestCelsius, HighestCelsius);
        return new(
            18 / (349 + t * (1.29 + 0.0135 * t)),
            0.805 + t * (0.000736 - 0.00000273 * t),
            6.27 - t * (0.00938 + 0.000303 * t),
            1.91 + t * (0.0407 - 0.000293 * t));
    }

    /// <summary>Moisture content in balance with a water activity (relative humidity). [kg kg⁻¹]</summary>
    /// <param name="activity">0 to 1.</param>
    public double Moisture(double activity)
    {
        var x = K * activity;
        var pair = K1 * K2 * x * x;
        return Scale * (x / (1 - x) + (K1 * x + 2 * pair) / (1 + K1 * x + pair));
    }

    /// <summary>Slope of <see cref="Moisture"/>, always above zero. [kg kg⁻¹]</summary>
    /// <param name="activity">0 to 1.</param>
    public double Slope(double activity)
    {
        var x = K * activity;
        double free = 1 - x, pair = K1 * K2 * x, denominator = 1 + x * (K1 + pair), numerator = x * (K1 + 2 * pair);
        return Scale * K * (1 / (free * free) + ((K1 + 4 * pair) * denominator - numerator * (K1 + 2 * pair)) / (denominator * denominator));
    }

    /// <summary>Moisture content at activity 1: what the cell walls hold, the fibre saturation point of this isotherm. [kg kg⁻¹]</summary>
    public double Saturation => Moisture(1);

    /// <summary>Water activity of wood at a moisture content: the inverse of <see cref="Moisture"/>; 1 at and above saturation.</summary>
    /// <param name="moisture">Moisture content, not negative. [kg kg⁻¹]</param>
    public double Activity(double moisture)
    {
        if (moisture <= 0) return 0;
        if (moisture >= Saturation) return 1;
        double low = 0, high = 1, activity = Math.Min(0.95, moisture / Saturation);
        for (var iteration = 0; iteration < 60; iteration++)
        {
            var excess = Moisture(activity) - moisture;
            if (excess > 0) high = activity; else low = activity;
            var next = activity - excess / Slope(activity);
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (Math.Abs(next - activity) < 1e-14) return next;
            activity = next;
        }

        return activity;
    }
}
