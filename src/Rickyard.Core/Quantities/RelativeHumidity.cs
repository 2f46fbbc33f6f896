namespace Rickyard.Core.Quantities;

/// <summary>Water-vapour pressure over its saturation pressure (over water, also below 0 °C, as weather services report it), a fraction 0 to 1.</summary>
public readonly record struct RelativeHumidity
{
    private RelativeHumidity(double value) => Fraction = value;

    /// <summary>[–]</summary>
    public double Fraction { get; }

    /// <summary>The same in percent.</summary>
    public double Percent => 100 * Fraction;

    /// <summary>From a fraction 0 to 1.</summary>
    public static RelativeHumidity FromFraction(double value) => value is >= 0 and <= 1
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Relative humidity must be 0 to 1 (0 to 100 %).");

    /// <summary>From percent, 0 to 100.</summary>
    public static RelativeHumidity FromPercent(double value) => FromFraction(value / 100);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{100 * Fraction:0.0} % relative humidity");
}
