using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>What a quantity of a case may be; the ranges are those the engine is checked in, with room for odd pieces.</summary>
internal static class CaseLimits
{
    /// <summary>Along the grain. [m]</summary>
    public static TypedQuantity AlongGrain { get; } = new(QuantityUnits.Length, 0.02, 6, "2 cm to 6 m", "16 in");

    /// <summary>Across the grain. [m]</summary>
    public static TypedQuantity AcrossGrain { get; } = new(QuantityUnits.Length, 0.005, 2, "5 mm to 2 m", "6 in");

    /// <summary>Of a wedge. [°]</summary>
    public static TypedQuantity Opening { get; } = new(QuantityUnits.Angle, 5, 180, "5 to 180°", "60°");

    /// <summary>Of a green piece. [kg]</summary>
    public static TypedQuantity PieceMass { get; } = new(QuantityUnits.Mass, 0.02, 500, "20 g to 500 kg", "4.6 kg");

    /// <summary>Oven-dry mass over green volume. [kg m⁻³]</summary>
    public static TypedQuantity BasicDensity { get; } = new(QuantityUnits.Density, 150, 1250, "150 to 1250 kg/m3", "640 kg/m3");

    /// <summary>Of the wood at the start. [°C]</summary>
    public static TypedQuantity WoodTemperature { get; } = new(QuantityUnits.Temperature, -40, 110, "-40 to 110 °C", "15 °C");

    /// <summary>Of the air. [°C]</summary>
    public static TypedQuantity AirTemperature { get; } = new(QuantityUnits.Temperature, -40, 110, "-40 to 110 °C", "25 °C");

    /// <summary>Relative humidity. [–]</summary>
    public static TypedQuantity Humidity { get; } = new(QuantityUnits.Humidity, 0, 1, "0 to 100 %", "30 %");

    /// <summary>At the wood. [m s⁻¹]</summary>
    public static TypedQuantity AirSpeed { get; } = new(QuantityUnits.Speed, 0, 20, "0 to 20 m/s", "0.2 m/s");

    /// <summary>Dry basis; how much the pores hold is asked of the wood. [kg kg⁻¹]</summary>
    public static TypedQuantity Moisture { get; } = new(QuantityUnits.Moisture, 0, double.MaxValue, "0 % up to what the wood can hold", "68 % dry basis");

    /// <summary>Relative standard deviation of the width. [–]</summary>
    public static TypedQuantity SizeSpread { get; } = new(QuantityUnits.Share, 0, 0.6, "0 to 60 %", "20 %");

    /// <summary>Of a run. [d]</summary>
    public static TypedQuantity RunLength { get; } = new(QuantityUnits.Duration, 1 / 24.0, 3650, "1 hour to 10 years", "37 days");

    /// <summary>Of a period. [d]</summary>
    public static TypedQuantity PeriodLength { get; } = new(QuantityUnits.Duration, 1 / 1440.0, 3650, "1 minute to 10 years", "5 days");

    /// <summary>Between reports. [d]</summary>
    public static TypedQuantity ReportEvery { get; } = new(QuantityUnits.Duration, 1 / 1440.0, 3650, "1 minute up to the length of the run", "1 day");
}
