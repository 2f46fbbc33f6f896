namespace Rickyard.Core.Quantities;

/// <summary>Mass of water vapour over mass of dry air; unlike relative humidity it does not change when air is warmed.</summary>
public readonly record struct HumidityRatio
{
    private HumidityRatio(double value) => Fraction = value;

    /// <summary>[kg kg⁻¹]</summary>
    public double Fraction { get; }

    /// <summary>From kilogram vapour per kilogram dry air, not negative.</summary>
    public static HumidityRatio FromFraction(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Humidity ratio must be finite and not negative.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{1000 * Fraction:0.00} g/kg");
}
