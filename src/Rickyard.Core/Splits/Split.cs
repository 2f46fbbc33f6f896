using Rickyard.Core.Quantities;

namespace Rickyard.Core.Splits;

/// <summary>
/// The green size of one piece. Made by the named factories; lengths in metre and angle in radian are kept raw because the grid
/// is built from them. Shrinkage on drying (a few percent of the width) is not followed by the geometry.
/// </summary>
public sealed record Split
{
    private Split(SplitShape shape, double inner, double outer, double angle, double length, bool bark) =>
        (Shape, Inner, Outer, Angle, Length, Bark) = (shape, inner, outer, angle, length, bark);

    /// <summary>How it was cut.</summary>
    public SplitShape Shape { get; }

    /// <summary>Inner radius (0 but for an inner wedge). [m]</summary>
    public double Inner { get; }

    /// <summary>Outer radius; for a block its width. [m]</summary>
    public double Outer { get; }

    /// <summary>Opening angle; for a block its height in metre. [rad or m]</summary>
    public double Angle { get; }

    /// <summary>Length along the grain. [m]</summary>
    public double Length { get; }

    /// <summary>Whether the outer face carries bark (never on a block).</summary>
    public bool Bark { get; }

    /// <summary>Whether the coordinates are those of a log (not a block).</summary>
    public bool IsPolar => Shape != SplitShape.Block;

    /// <summary>Set when the size was guessed from the mass alone: the sentence that says so.</summary>
    public string? Guess { get; private init; }

    /// <summary>Area of the cross-section. [m²]</summary>
    public double CrossSection => IsPolar ? Angle / 2 * (Outer * Outer - Inner * Inner) : Outer * Angle;

    /// <summary>Green volume. [m³]</summary>
    public double Volume => CrossSection * Length;

    /// <summary>Area under bark. [m²]</summary>
    public double BarkArea => Bark ? Angle * Outer * Length : 0;

    /// <summary>Area of both ends. [m²]</summary>
    public double EndArea => 2 * CrossSection;

    /// <summary>Bare area across the grain. [m²]</summary>
    public double SideArea => Perimeter * Length - BarkArea;

    /// <summary>All outer area. [m²]</summary>
    public double Area => Perimeter * Length + EndArea;

    /// <summary>Smallest thickness a person would measure across the piece. [m]</summary>
    public double Thickness => Shape switch
    {
        SplitShape.Block => Math.Min(Outer, Angle),
        SplitShape.Round => 2 * Outer,
        SplitShape.HalfRound => Outer,
        _ => Math.Min(Outer - Inner, 2 * Outer * Math.Sin(Math.Min(Angle, Math.PI) / 2)),
    };

    /// <summary>Diameter of a round with as much surface for its section: four sections over the perimeter. [m]</summary>
    public double SurfaceDiameter => 4 * CrossSection / Perimeter;

    /// <summary>A wedge from pith to bark.</summary>
    public static Split Wedge(Length radius, Angle angle, Length length, bool bark = true) =>
        new(SplitShape.Wedge, 0, Positive(radius), Opening(angle), Positive(length), bark);

    /// <summary>Half a log.</summary>
    public static Split HalfRound(Length diameter, Length length, bool bark = true) =>
        new(SplitShape.HalfRound, 0, Positive(diameter) / 2, Math.PI, Positive(length), bark);

    /// <summary>A whole log.</summary>
    public static Split Round(Length diameter, Length length, bool bark = true) =>
        new(SplitShape.Round, 0, Positive(diameter) / 2, 2 * Math.PI, Positive(length), bark);

    /// <summary>A wedge with its heart split off at an inner radius.</summary>
    public static Split InnerWedge(Length innerRadius, Length outerRadius, Angle angle, Length length, bool bark = true) =>
        Positive(innerRadius) < Positive(outerRadius)
            ? new(SplitShape.InnerWedge, innerRadius.Metres, outerRadius.Metres, Opening(angle), Positive(length), bark)
            : throw new ArgumentException($"Inner radius {innerRadius} must be below outer radius {outerRadius}.", nameof(innerRadius));

    /// <summary>A squared block, bare all round.</summary>
    public static Split Block(Length width, Length height, Length length) =>
        new(SplitShape.Block, 0, Positive(width), Positive(height), Positive(length), false);

    /// <summary>
    /// The piece that a length and a green mass suggest: a wedge of 60° (about what six splits from one log give; common practice, no
    /// source), or the shape asked for, with the cross-section that gives the mass. <see cref="Guess"/> says so.
    /// </summary>
    /// <param name="shape">Wedge, half round, round or block (taken as square).</param>
    /// <param name="length">Length along the grain.</param>
    /// <param name="greenMass">Mass when green, bark neglected.</param>
    /// <param name="greenDensity">Green mass over green volume: basic density × (1 + green moisture).</param>
    /// <param name="bark">Whether it carries bark.</param>
    public static Split FromMass(SplitShape shape, Length length, Mass greenMass, Density greenDensity, bool bark = true)
    {
        var section = greenMass.Kilograms / greenDensity.KilogramsPerCubicMetre / Positive(length);
        var sixth = Quantities.Angle.FromDegrees(60);
        var split = shape switch
        {
            SplitShape.Wedge => Wedge(Quantities.Length.FromMetres(Math.Sqrt(2 * section / sixth.Radians)), sixth, length, bark),
            SplitShape.HalfRound => HalfRound(Quantities.Length.FromMetres(2 * Math.Sqrt(2 * section / Math.PI)), length, bark),
            SplitShape.Round => Round(Quantities.Length.FromMetres(2 * Math.Sqrt(section / Math.PI)), length, bark),
            SplitShape.Block => Block(Quantities.Length.FromMetres(Math.Sqrt(section)), Quantities.Length.FromMetres(Math.Sqrt(section)), length),
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "An inner wedge has two radii; its size cannot be guessed from a mass."),
        };
        return split with { Guess = FormattableString.Invariant($"The size is a guess from {greenMass.Kilograms:0.0#} kg green: {split.Describe()}.") };
    }

    /// <summary>The same piece with all cross-wise dimensions scaled (size spread of a lot); length and angle stay.</summary>
    public Split ScaledAcross(double factor) => factor > 0 && double.IsFinite(factor)
        ? new(Shape, Inner * factor, Outer * factor, IsPolar ? Angle : Angle * factor, Length, Bark) { Guess = Guess }
        : throw new ArgumentOutOfRangeException(nameof(factor), factor, "Scale must be finite and above zero.");

    /// <summary>The size in words, metric.</summary>
    public string Describe() => Shape switch
    {
        SplitShape.Wedge => FormattableString.Invariant($"a wedge of {1000 * Outer:0} mm radius and {Angle * 180 / Math.PI:0}°, {1000 * Length:0} mm long"),
        SplitShape.HalfRound => FormattableString.Invariant($"a half round of {2000 * Outer:0} mm diameter, {1000 * Length:0} mm long"),
        SplitShape.Round => FormattableString.Invariant($"a round of {2000 * Outer:0} mm diameter, {1000 * Length:0} mm long"),
        SplitShape.InnerWedge => FormattableString.Invariant(
            $"an inner wedge from {1000 * Inner:0} to {1000 * Outer:0} mm radius and {Angle * 180 / Math.PI:0}°, {1000 * Length:0} mm long"),
        _ => FormattableString.Invariant($"a block of {1000 * Outer:0} × {1000 * Angle:0} mm, {1000 * Length:0} mm long"),
    };

    private double Perimeter => Shape switch
    {
        SplitShape.Block => 2 * (Outer + Angle),
        SplitShape.Round => Angle * Outer,
        _ => Angle * (Outer + Inner) + 2 * (Outer - Inner),
    };

    private static double Positive(Length length) => length.Metres > 0
        ? length.Metres
        : throw new ArgumentOutOfRangeException(nameof(length), length.Metres, "A dimension must be above zero.");

    private static double Opening(Angle angle) => angle.Radians is > 0 and <= Math.PI + 1e-9
        ? angle.Radians
        : throw new ArgumentOutOfRangeException(nameof(angle), angle.Degrees, "A wedge opens by more than 0° and at most 180°.");
}
