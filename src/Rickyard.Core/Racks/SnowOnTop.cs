namespace Rickyard.Core.Racks;

/// <summary>
/// Snow on an open stack: below 0 °C it lies and wets nothing; above, it melts by degree-hours (physics.md, eq. R11). Published degree-day
/// factors run from 2 to 6 mm d⁻¹ K⁻¹ (Hock 2003, from memory).
/// </summary>
internal sealed class SnowOnTop
{
    /// <summary>3 mm a day and kelvin. [mm h⁻¹ K⁻¹]</summary>
    private const double MeltPerDegreeHour = 3.0 / 24;

    /// <summary>More slides off; judgement. [mm of water]</summary>
    private const double Most = 60;

    private double _lying;

    /// <summary>Takes one hour of weather. [mm]</summary>
    /// <param name="celsius">[°C]</param>
    /// <param name="precipitation">Rain or melted snow fallen. [mm]</param>
    /// <returns>Rain, and melt water beside it. [mm]</returns>
    public (double Rain, double Melt) Next(double celsius, double precipitation)
    {
        if (celsius < 0)
        {
            _lying = Math.Min(Most, _lying + precipitation);
            return (0, 0);
        }

        var melt = Math.Min(_lying, MeltPerDegreeHour * celsius);
        _lying -= melt;
        return (precipitation, melt);
    }
}
