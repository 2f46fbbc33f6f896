namespace Rickyard.Core.Quantities;

/// <summary>A mass, stored in kilogram; never negative.</summary>
public readonly record struct Mass
{
    private Mass(double value) => Kilograms = value;

    /// <summary>[kg]</summary>
    public double Kilograms { get; }

    /// <summary>[lb]</summary>
    public double Pounds => Kilograms / 0.45359237;

    /// <summary>From kilogram.</summary>
    public static Mass FromKilograms(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Mass must be finite and not negative.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Kilograms:0.000} kg");
}
