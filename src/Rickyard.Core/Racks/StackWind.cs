namespace Rickyard.Core.Racks;

/// <summary>
/// From the wind of a weather station to the air between the splits (physics.md, eq. R1, R2 and R5). The power law is published; its use
/// below 2 m, the shelter, and what passes the gaps are judgement, spread by <see cref="RackUncertainty.Wind"/>.
/// </summary>
internal static class StackWind
{
    private const double StationHeight = 10;

    /// <summary>Half the height of a stack of 1.2 m, rounded up for its feet. [m]</summary>
    private const double StackHeight = 0.8;

    /// <summary>Exponent over hedges, gardens and scattered houses; published values run from 0.14 (grass) to 0.25 (suburb).</summary>
    private const double Exponent = 0.20;

    /// <summary>Behind a house or hedge; measured windbreaks leave 0.2 to 0.6 within a few heights.</summary>
    private const double Sheltered = 0.4;

    /// <summary>Speed in the gaps of one row over the speed before it, averaged over wind directions; judgement.</summary>
    private const double GapShare = 0.25;

    /// <summary>Air moves this much by warmth and moisture alone; judgement. [m s⁻¹]</summary>
    private const double Calm = 0.04;

    /// <summary>The same under a tarpaulin down to the ground; judgement. [m s⁻¹]</summary>
    private const double CalmUnderTarp = 0.01;

    /// <summary>Wind just before the stack. [m s⁻¹]</summary>
    public static double Before(double stationWind, RackWind wind) =>
        stationWind * Math.Pow(StackHeight / StationHeight, Exponent) * (wind == RackWind.Sheltered ? Sheltered : 1);

    /// <summary>Air speed between the splits: each further row adds its resistance, which goes with the square of speed. [m s⁻¹]</summary>
    public static double Between(double before, RackDescription rack, double factor)
    {
        var blown = before * GapShare * Passing(rack.Cover) / Math.Sqrt(rack.Rows);
        var calm = rack.Cover == RackCover.Tarp ? CalmUnderTarp : Calm;
        return factor * Math.Sqrt(blown * blown + calm * calm);
    }

    /// <summary>Air that passes a split, per area of its faces: what flows through the open section, shared by all faces behind it. [m³ s⁻¹ m⁻²]</summary>
    public static double FreshAir(double between, RackDescription rack, StackGeometry stack) =>
        between * stack.OpenFraction / (stack.FacesPerVolume * stack.Depth(rack.Rows));

    private static double Passing(RackCover cover) => cover switch { RackCover.Tarp => 0.12, RackCover.Shed => 0.6, _ => 1 };
}
