using System.Numerics;

namespace Rickyard.Core.Quantities;

/// <summary>Thermodynamic temperature, stored in kelvin; never below absolute zero. A difference is a <see cref="TemperatureDelta"/>.</summary>
public readonly record struct Temperature :
    IAdditionOperators<Temperature, TemperatureDelta, Temperature>, ISubtractionOperators<Temperature, Temperature, TemperatureDelta>
{
    /// <summary>The ice point. [K]</summary>
    public const double IcePointKelvins = 273.15;

    private Temperature(double kelvins) => Kelvins = kelvins;

    /// <summary>[K]</summary>
    public double Kelvins { get; }

    /// <summary>[°C]</summary>
    public double Celsius => Kelvins - IcePointKelvins;

    /// <summary>[°F]</summary>
    public double Fahrenheit => Celsius * 1.8 + 32;

    /// <summary>From degrees Celsius.</summary>
    public static Temperature FromCelsius(double value) => FromKelvins(value + IcePointKelvins);

    /// <summary>From degrees Fahrenheit.</summary>
    public static Temperature FromFahrenheit(double value) => FromCelsius((value - 32) / 1.8);

    /// <summary>From kelvin, finite and at or above 0.</summary>
    public static Temperature FromKelvins(double value) => value >= 0 && double.IsFinite(value)
        ? new(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "Temperature must be finite and at or above 0 K.");

    /// <summary>Shift by a difference.</summary>
    public static Temperature operator +(Temperature left, TemperatureDelta right) => FromKelvins(left.Kelvins + right.Kelvins);

    /// <summary>Difference of two temperatures.</summary>
    public static TemperatureDelta operator -(Temperature left, Temperature right) => TemperatureDelta.FromKelvins(left.Kelvins - right.Kelvins);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Celsius:0.0} °C");
}
