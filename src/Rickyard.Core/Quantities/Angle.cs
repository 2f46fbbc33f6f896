namespace Rickyard.Core.Quantities;

/// <summary>An opening angle, stored in radian, 0 to a full turn.</summary>
public readonly record struct Angle
{
    private Angle(double value) => Radians = value;

    /// <summary>[rad]</summary>
    public double Radians { get; }

    /// <summary>[°]</summary>
    public double Degrees => Radians * 180 / Math.PI;

    /// <summary>From radian, 0 to 2π.</summary>
    public static Angle FromRadians(double value) => value is >= 0 and <= 2 * Math.PI + 1e-12
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Angle must be 0 to 2π (0 to 360°).");

    /// <summary>From degrees.</summary>
    public static Angle FromDegrees(double value) => FromRadians(value * Math.PI / 180);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Degrees:0.#}°");
}
