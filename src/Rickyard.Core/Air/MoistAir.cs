using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>
/// The state of moist air: temperature, vapour pressure, total pressure, and all that follows from them. Relative humidity and dew point
/// are over liquid water, also below 0 °C, as weather services report them; so air just saturated over ice at -20 °C has 82 %, and air
/// between ice and water saturation is allowed. Checked from -40 to 110 °C; the formulas serve -100 to 200 °C, beyond which is a problem.
/// The vapour must press less than the whole air: from the boiling point up the relative humidity has a ceiling, p / p_sat(T).
/// </summary>
public sealed record MoistAir
{
    /// <summary>From a vapour pressure already known to be possible.</summary>
    /// <exception cref="ArgumentException">The state is impossible; <see cref="FromVaporPressure"/> says why in words for a person.</exception>
    public MoistAir(Temperature temperature, Pressure vaporPressure, Pressure pressure)
    {
        if (AirLimits.ProblemsOf(temperature, vaporPressure, pressure, "vapour pressure") is [var first, ..]) throw new ArgumentException(first.ToString());
        (Temperature, VaporPressure, Pressure) = (temperature, vaporPressure, pressure);
    }

    /// <summary>Dry-bulb temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>Partial pressure of the water vapour.</summary>
    public Pressure VaporPressure { get; }

    /// <summary>Total pressure.</summary>
    public Pressure Pressure { get; }

    /// <summary>Vapour over dry air.</summary>
    public HumidityRatio HumidityRatio => HumidityRatio.FromFraction(Ratio);

    /// <summary>Over liquid water, also below 0 °C.</summary>
    public RelativeHumidity RelativeHumidity =>
        RelativeHumidity.FromFraction(Math.Min(1, VaporPressure.Pascals / SaturationPressure.OverWater(Temperature.Kelvins)));

    /// <summary>Where water would condense as liquid, also below 0 °C; vapour pressures below 0.001 Pa count as that.</summary>
    public Temperature DewPoint => Temperature.FromKelvins(SaturationPressure.InverseOverWater(VaporPressure.Pascals));

    /// <summary>Where a cooled surface first takes dew, or below 0 °C frost.</summary>
    public Temperature DewOrFrostPoint => Temperature.FromKelvins(SaturationPressure.Inverse(VaporPressure.Pascals));

    /// <summary>Thermodynamic wet bulb; the wick is ice below 0 °C.</summary>
    public Temperature WetBulb => Temperature.FromKelvins(Psychrometrics.WetBulb(Temperature.Kelvins, Ratio, Pressure.Pascals));

    /// <summary>Zero for dry air and liquid water at 0 °C. [J per kg of dry air]</summary>
    public double Enthalpy => Psychrometrics.Enthalpy(Temperature.Kelvins, Ratio);

    /// <summary>[m³ per kg of dry air]</summary>
    public double SpecificVolume => Psychrometrics.SpecificVolume(Temperature.Kelvins, Ratio, Pressure.Pascals);

    /// <summary>Air and vapour together.</summary>
    public Density Density => Density.FromKilogramsPerCubicMetre((1 + Ratio) / SpecificVolume);

    private double Ratio => Psychrometrics.HumidityRatio(VaporPressure.Pascals, Pressure.Pascals);

    /// <summary>From relative humidity over water.</summary>
    public static Result<MoistAir> FromRelativeHumidity(Temperature temperature, RelativeHumidity humidity, Pressure pressure) =>
        Build(temperature, humidity.Fraction * SaturationPressure.OverWater(temperature.Kelvins), pressure, "relative humidity");

    /// <summary>From partial pressure of the vapour.</summary>
    public static Result<MoistAir> FromVaporPressure(Temperature temperature, Pressure vaporPressure, Pressure pressure) =>
        Build(temperature, vaporPressure.Pascals, pressure, "vapour pressure");

    /// <summary>From vapour over dry air.</summary>
    public static Result<MoistAir> FromHumidityRatio(Temperature temperature, HumidityRatio ratio, Pressure pressure) =>
        Build(temperature, Psychrometrics.VaporPressure(ratio.Fraction, pressure.Pascals), pressure, "humidity ratio");

    /// <summary>From dew point over water, also below 0 °C, as weather services report it.</summary>
    public static Result<MoistAir> FromDewPoint(Temperature temperature, Temperature dewPoint, Pressure pressure) =>
        Build(temperature, SaturationPressure.OverWater(dewPoint.Kelvins), pressure, "dew point");

    /// <summary>From wet bulb, whose wick is ice below 0 °C.</summary>
    public static Result<MoistAir> FromWetBulb(Temperature temperature, Temperature wetBulb, Pressure pressure)
    {
        if (AirLimits.ProblemsOfWetBulb(temperature, wetBulb, pressure) is { Count: > 0 } problems) return ResultOf.Failure<MoistAir>(problems);
        var ratio = Psychrometrics.HumidityRatioFromWetBulb(temperature.Kelvins, wetBulb.Kelvins, pressure.Pascals);
        return Build(temperature, Psychrometrics.VaporPressure(Math.Max(0, ratio), pressure.Pascals), pressure, "wet bulb");
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Temperature}, {RelativeHumidity}, {Pressure}";

    private static Result<MoistAir> Build(Temperature temperature, double pascals, Pressure pressure, string field)
    {
        var vaporPressure = Pressure.FromPascals(Math.Min(pascals, double.MaxValue));
        var problems = AirLimits.ProblemsOf(temperature, vaporPressure, pressure, field);
        return problems.Count > 0 ? ResultOf.Failure<MoistAir>(problems) : ResultOf.Success(new MoistAir(temperature, vaporPressure, pressure));
    }
}
