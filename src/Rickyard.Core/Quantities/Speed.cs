namespace Rickyard.Core.Quantities;

/// <summary>Speed of the air, stored in metre per second; never negative.</summary>
public readonly record struct Speed
{
    private Speed(double value) => MetresPerSecond = value;

    /// <summary>[m s⁻¹]</summary>
    public double MetresPerSecond { get; }

    /// <summary>From metre per second.</summary>
    public static Speed FromMetresPerSecond(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Speed must be finite and not negative.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{MetresPerSecond:0.0} m/s");
}
