using Rickyard.Core.Quantities;

namespace Rickyard.Core.Cases;

/// <summary>What a quantity of a hot box may be: from a carton with a lamp to a shed; beyond it something was mistyped.</summary>
internal static class BoxLimits
{
    /// <summary>Inside, from wall to wall. [m]</summary>
    public static TypedQuantity Inside { get; } = new(QuantityUnits.Length, 0.1, 20, "10 cm to 20 m", "65 cm");

    /// <summary>From the inside face of a wall or glazing to the air outside. [W m⁻² K⁻¹]</summary>
    public static TypedQuantity Conductance { get; } = new(QuantityUnits.Conductance, 0.05, 20, "0.05 to 20 W/m2K", "1.2 W/m2K");

    /// <summary>Of the inner part of the walls. [J m⁻² K⁻¹]</summary>
    public static TypedQuantity HeatCapacity { get; } = new(QuantityUnits.AreaHeatCapacity, 500, 1e6, "0.5 to 1000 kJ/m2K", "12 kJ/m2K");

    /// <summary>Of a heater. [W]</summary>
    public static TypedQuantity HeaterPower { get; } = new(QuantityUnits.Power, 5, 1e5, "5 W to 100 kW", "1500 W");

    /// <summary>From full power to none. [K]</summary>
    public static TypedQuantity ThermostatBand { get; } = new(QuantityUnits.TemperatureDelta, 0.1, 20, "0.1 to 20 K", "3 K");

    /// <summary>Part of the heat that shines. [–]</summary>
    public static TypedQuantity RadiantShare { get; } = new(QuantityUnits.Share, 0, 0.8, "0 to 80 %", "10 %");

    /// <summary>Heat given over energy bought. [–]</summary>
    public static TypedQuantity Efficiency { get; } = new(QuantityUnits.Share, 0.3, 1, "30 to 100 %", "80 %");

    /// <summary>Of a fan's stream at the wood. [m s⁻¹]</summary>
    public static TypedQuantity FanSpeed { get; } = new(QuantityUnits.Speed, 0.05, 20, "0.05 to 20 m/s", "0.5 m/s");

    /// <summary>Carried round by a fan. [m³ s⁻¹]</summary>
    public static TypedQuantity FanFlow { get; } = new(QuantityUnits.AirFlow, 1e-4, 50, "0.36 to 180 000 m3/h", "300 m3/h");

    /// <summary>Of a fan. [W]</summary>
    public static TypedQuantity FanPower { get; } = new(QuantityUnits.Power, 0, 1e4, "0 W to 10 kW", "40 W");

    /// <summary>Blown in. [m³ s⁻¹]</summary>
    public static TypedQuantity VentFlow { get; } = new(QuantityUnits.AirFlow, 0, 50, "0 to 180 000 m3/h", "20 m3/h");

    /// <summary>Of a vent or of all gaps. [m²]</summary>
    public static TypedQuantity Opening { get; } = new(QuantityUnits.Area, 0, 4, "0 to 4 m2", "20 cm2");

    /// <summary>About which something opens or runs. [–]</summary>
    public static TypedQuantity HumidityLimit { get; } = new(QuantityUnits.Humidity, 0.02, 0.98, "2 to 98 %", "60 %");

    /// <summary>Of a dehumidifier. [kg s⁻¹]</summary>
    public static TypedQuantity DehumidifierCapacity { get; } = new(QuantityUnits.WaterRate, 0.1 / 86_400, 2000.0 / 86_400, "0.1 to 2000 L/day", "14 L/day");

    /// <summary>Water for its electricity. [kg kWh⁻¹]</summary>
    public static TypedQuantity DehumidifierEfficiency { get; } = new(QuantityUnits.WaterPerEnergy, 0.2, 8, "0.2 to 8 L/kWh", "1.6 L/kWh");

    /// <summary>Glazing. [m²]</summary>
    public static TypedQuantity Glazing { get; } = new(QuantityUnits.Area, 0.01, 400, "0.01 to 400 m2", "2 m2");

    /// <summary>Of the sun on the glazing. [–]</summary>
    public static TypedQuantity SunGain { get; } = new(QuantityUnits.Share, 0, 1, "0 to 100 %", "60 %");

    /// <summary>Of the thermostat; the safety limits are asked besides. [°C]</summary>
    public static TypedQuantity Setting { get; } = new(QuantityUnits.Temperature, 0, 250, "0 to 77 °C", "70 °C");
}
