namespace Rickyard.Core.Racks;

/// <summary>
/// Sun absorbed by a stack, less what it loses to a cold sky, averaged over all its faces (physics.md, eq. R6 and R7). Absorptivity is
/// published for wood; the shares are judgement, spread by <see cref="RackUncertainty.Sun"/>.
/// </summary>
internal static class StackSun
{
    /// <summary>Of fresh to weathered wood and bark 0.4 to 0.6.</summary>
    private const double Absorptivity = 0.5;

    /// <summary>Sun on both long sides of a stack together, over sun on the ground: about 0.6 on the sunny side, 0.2 of sky and ground light on the other.</summary>
    private const double BothSides = 0.8;

    /// <summary>Net loss to the sky of a level face at night, clouds averaged in; 60 to 100 under a clear sky. [W m⁻²]</summary>
    private const double SkyLoss = 40;

    /// <summary>What both long sides lose to the sky, over a level face of the same area: each sees half the sky, the warmer half of it.</summary>
    private const double SidesToSky = 0.5;

    /// <summary>Heat absorbed less heat lost to the sky. [W m⁻²]</summary>
    public static double Absorbed(double globalSun, double rain, RackDescription rack, StackGeometry stack, double factor)
    {
        double depth = stack.Depth(rack.Rows), faces = stack.FacesPerVolume * stack.Height * depth;
        var (top, sides) = Lit(rack.Cover);
        var sun = factor * Absorptivity * Share(rack.Sun) * globalSun * (top * depth + sides * BothSides * stack.Height) / faces;
        var sky = globalSun > 0 || rain > 0 ? 0 : SkyLoss * OpenToSky(rack) * (top * depth + sides * SidesToSky * stack.Height) / faces;
        return sun - sky;
    }

    private static (double Top, double Sides) Lit(RackCover cover) => cover switch
    {
        RackCover.None => (1, 1),
        RackCover.Top => (0, 0.85),
        RackCover.Shed => (0, 0.3),
        _ => (0, 0.15),
    };

    private static double Share(RackSun sun) => sun switch { RackSun.Full => 1, RackSun.Part => 0.5, _ => 0.15 };

    private static double OpenToSky(RackDescription rack) => rack.Sun == RackSun.Shade ? 0.5 : 1;
}
