namespace Rickyard.Core.Quantities;

/// <summary>Mass per volume, stored in kilogram per cubic metre. Of wood, always say which: basic density is oven-dry mass over green volume.</summary>
public readonly record struct Density
{
    private Density(double value) => KilogramsPerCubicMetre = value;

    /// <summary>[kg m⁻³]</summary>
    public double KilogramsPerCubicMetre { get; }

    /// <summary>From kilogram per cubic metre, above zero.</summary>
    public static Density FromKilogramsPerCubicMetre(double value) => value > 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Density must be finite and above zero.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{KilogramsPerCubicMetre:0} kg/m³");
}
