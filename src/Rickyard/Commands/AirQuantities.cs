using Rickyard.Core.Quantities;

namespace Rickyard.Commands;

/// <summary>What the small questions about air and wood take.</summary>
internal static class AirQuantities
{
    /// <summary>[°C]</summary>
    public static TypedQuantity Temperature { get; } = new(QuantityUnits.Temperature, -40, 110, "-40 to 110 °C", "27 °C");

    /// <summary>[–]</summary>
    public static TypedQuantity Humidity { get; } = new(QuantityUnits.Humidity, 0, 1, "0 to 100 %", "65 %");

    /// <summary>Above the sea. [m]</summary>
    public static TypedQuantity Elevation { get; } = new(QuantityUnits.Length, -400, 6000, "-400 to 6000 m", "1600 m");

    /// <summary>[Pa]</summary>
    public static TypedQuantity Pressure { get; } = new(QuantityUnits.Pressure, 40_000, 110_000, "40 to 110 kPa (absolute, not reduced to sea level)", "840 hPa");

    /// <summary>Dry basis. [kg kg⁻¹]</summary>
    public static TypedQuantity Moisture { get; } = new(QuantityUnits.Moisture, 0, 1, "0 to 100 % dry basis", "12 % dry basis");
}
