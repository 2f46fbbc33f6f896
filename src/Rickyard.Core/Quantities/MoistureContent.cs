namespace Rickyard.Core.Quantities;

/// <summary>Mass of water over mass of oven-dry wood, a fraction: 0.20 is "20 % dry basis". The default is oven-dry wood.</summary>
public readonly record struct MoistureContent
{
    private MoistureContent(double fraction) => Fraction = fraction;

    /// <summary>Water over oven-dry wood. [kg kg⁻¹]</summary>
    public double Fraction { get; }

    /// <summary>The same in percent, dry basis.</summary>
    public double PercentDry => 100 * Fraction;

    /// <summary>Water over total mass, in percent (wet basis).</summary>
    public double PercentWet => 100 * Fraction / (1 + Fraction);

    /// <summary>From a dry-basis fraction, 0 to 5 (the lightest woods hold about 3 when their pores are full).</summary>
    public static MoistureContent FromFraction(double value) => value is >= 0 and <= 5
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Moisture content (dry basis, fraction) must be 0 to 5.");

    /// <summary>From percent, dry basis.</summary>
    public static MoistureContent FromPercentDry(double value) => FromFraction(value / 100);

    /// <summary>From percent, wet basis; must lie below 100.</summary>
    public static MoistureContent FromPercentWet(double value) => value is >= 0 and < 100
        ? FromFraction(value / (100 - value))
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Moisture content (wet basis, %) must be 0 to below 100.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{PercentDry:0.0} % dry basis");
}
