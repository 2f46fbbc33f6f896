namespace Rickyard.Core.Measuring.Profiles;

/// <summary>A piece well into drying, its moisture a parabola from surface to centre (physics.md, Q8). A rule of thumb: bare pins and bark bend it. [kg kg⁻¹]</summary>
/// <param name="Shape">Shape of the piece.</param>
/// <param name="Surface">Moisture at the surface.</param>
/// <param name="Core">Moisture in the centre.</param>
public sealed record ParabolicProfile(ProfileShape Shape, double Surface, double Core)
{
    // Means of 1 - (1 - 2u)² over a slab's outer quarters and inner half.
    private const double OuterQuarters = 5.0 / 12, InnerHalf = 11.0 / 12;

    /// <summary>Mean of the whole piece.</summary>
    public double Mean => Surface + MeanShare(Shape) * (Core - Surface);

    /// <summary>Moisture at a depth below the surface.</summary>
    /// <param name="depth">As a fraction of the whole thickness, 0 to 0.5.</param>
    public double At(double depth) => Surface + Rise(depth) * (Core - Surface);

    /// <summary>How far the mean lies above the surface, as a fraction of core less surface.</summary>
    public static double MeanShare(ProfileShape shape) => shape switch
    {
        ProfileShape.Slab => 2.0 / 3,
        ProfileShape.Round => 1.0 / 2,
        ProfileShape.Square => 4.0 / 9,
        ProfileShape.Block => 2.0 / 5,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "Not a shape."),
    };

    /// <summary>The depth at which a pin reads the mean, as a fraction of the thickness or diameter.</summary>
    public static double MeanDepth(ProfileShape shape) => (1 - Math.Sqrt(1 - MeanShare(shape))) / 2;

    /// <summary>From readings at two depths, both below fibre saturation.</summary>
    /// <param name="shape">Shape of the piece.</param>
    /// <param name="firstDepth">As a fraction of the thickness, 0 to 0.5.</param>
    /// <param name="first">Read there.</param>
    /// <param name="secondDepth">Another depth, 0 to 0.5.</param>
    /// <param name="second">Read there.</param>
    public static ParabolicProfile FromPins(ProfileShape shape, double firstDepth, double first, double secondDepth, double second)
    {
        double rise = Rise(secondDepth) - Rise(firstDepth);
        if (rise == 0) throw new ArgumentException("Two different depths are needed.", nameof(secondDepth));
        var difference = (second - first) / rise;
        var surface = first - Rise(firstDepth) * difference;
        return new(shape, surface, surface + difference);
    }

    /// <summary>From the means of the two outer quarters and of the inner half of a slab, as they are cut and dried in an oven.</summary>
    /// <param name="shell">Mean of the two outer quarters.</param>
    /// <param name="inner">Mean of the inner half.</param>
    public static ParabolicProfile FromQuarters(double shell, double inner)
    {
        var difference = (inner - shell) / (InnerHalf - OuterQuarters);
        var surface = shell - OuterQuarters * difference;
        return new(ProfileShape.Slab, surface, surface + difference);
    }

    /// <summary>The driest that a piece with such a core can be, its surface already at rest with the air.</summary>
    /// <param name="shape">Shape of the piece.</param>
    /// <param name="core">Read in the centre of a face just split open.</param>
    /// <param name="emc">The moisture the air brings wood to.</param>
    public static ParabolicProfile DriestWith(ProfileShape shape, double core, double emc) => new(shape, Math.Min(core, emc), core);

    private static double Rise(double depth) => depth is >= 0 and <= 0.5
        ? 1 - (1 - 2 * depth) * (1 - 2 * depth)
        : throw new ArgumentOutOfRangeException(nameof(depth), depth, "A depth is 0 to 0.5 of the thickness.");
}
