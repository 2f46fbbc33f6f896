namespace Rickyard.Core.Quantities;

/// <summary>A length, stored in metre; never negative.</summary>
public readonly record struct Length
{
    private Length(double value) => Metres = value;

    /// <summary>[m]</summary>
    public double Metres { get; }

    /// <summary>[in]</summary>
    public double Inches => Metres / 0.0254;

    /// <summary>From metre.</summary>
    public static Length FromMetres(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Length must be finite and not negative.");

    /// <summary>From millimetre.</summary>
    public static Length FromMillimetres(double value) => FromMetres(value / 1000);

    /// <summary>From inch.</summary>
    public static Length FromInches(double value) => FromMetres(value * 0.0254);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Metres:0.###} m");
}
