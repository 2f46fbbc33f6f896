namespace Rickyard.Core.Quantities;

/// <summary>A difference of two temperatures; unlike <see cref="Temperature"/> it may be negative, and its default is no difference.</summary>
public readonly record struct TemperatureDelta
{
    private TemperatureDelta(double kelvins) => Kelvins = kelvins;

    /// <summary>[K]</summary>
    public double Kelvins { get; }

    /// <summary>From kelvin (or degrees Celsius of difference).</summary>
    public static TemperatureDelta FromKelvins(double value) => double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A temperature difference must be finite.");

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Kelvins:0.0} K");
}
