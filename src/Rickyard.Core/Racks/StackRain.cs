namespace Rickyard.Core.Racks;

/// <summary>
/// Rain on the faces of a stack (physics.md, eq. R8 to R10): what falls on an open top trickles over the sides of the splits below; what
/// the wind drives against the windward face wets the end grain there most. The driving-rain relation is published (Lacy 1965, Straube and Burnett
/// 2000, from memory); shares and covers are judgement, spread by <see cref="RackUncertainty.Rain"/>.
/// </summary>
internal static class StackRain
{
    /// <summary>Free driving rain is 0.222 · wind · rain^0.88, in m/s and mm/h (Lacy 1965).</summary>
    private const double Driving = 0.222;

    private const double DrivingExponent = 0.88;

    /// <summary>Share of the driving rain that a low body catches; Straube and Burnett give 0.2 to 1 by place on a building.</summary>
    private const double Admittance = 0.5;

    /// <summary>Mean of the cosine over wind directions at the windward of two opposite faces: 2/π.</summary>
    private const double Direction = 2 / Math.PI;

    private const double SecondsAnHour = 3600;

    /// <summary>Rain on sides and on ends, averaged over all splits. [kg m⁻² s⁻¹]</summary>
    /// <param name="falling">Rain and melt water on the level. [mm h⁻¹]</param>
    /// <param name="rain">Rain that wind can drive. [mm h⁻¹]</param>
    /// <param name="before">Wind before the stack. [m s⁻¹]</param>
    /// <param name="rack">The rack.</param>
    /// <param name="stack">Its sizes.</param>
    /// <param name="factor">Multiple of all rain.</param>
    public static (double Sides, double Ends) OnFaces(double falling, double rain, double before, RackDescription rack, StackGeometry stack, double factor)
    {
        var (open, driven) = Reaching(rack.Cover);
        var front = driven * Admittance * Direction * Driving * before * Math.Pow(rain, DrivingExponent);
        var sides = open * falling / (stack.SidesPerVolume * stack.Height) + front * stack.OpenFraction / (stack.SidesPerVolume * stack.Depth(rack.Rows));
        var ends = front / (2 * rack.Rows);
        return (factor * sides / SecondsAnHour, factor * ends / SecondsAnHour);
    }

    /// <summary>Shares of falling and of driven rain that pass a cover.</summary>
    private static (double Falling, double Driven) Reaching(RackCover cover) => cover switch
    {
        RackCover.None => (1, 1),
        RackCover.Top => (0.05, 0.7),
        RackCover.Shed => (0.02, 0.3),
        _ => (0.02, 0.05),
    };
}
