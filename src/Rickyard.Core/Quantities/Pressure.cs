namespace Rickyard.Core.Quantities;

/// <summary>Absolute or partial pressure, stored in pascal; never negative.</summary>
public readonly record struct Pressure
{
    private Pressure(double value) => Pascals = value;

    /// <summary>[Pa]</summary>
    public double Pascals { get; }

    /// <summary>Standard atmosphere, 101 325 Pa.</summary>
    public static Pressure StandardAtmosphere => new(101325);

    /// <summary>From pascal.</summary>
    public static Pressure FromPascals(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Pressure must be finite and not negative.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Pascals:0} Pa");
}
