namespace Rickyard.Core.Boxes;

/// <summary>A machine that condenses water out of the box's air; the heat of it stays in the box.</summary>
/// <param name="Capacity">Water taken out at 18.3 °C and 60 % relative humidity, the usual rating point. [kg s⁻¹]</param>
/// <param name="LitresPerKilowattHour">Water per electric energy at that point. [kg kWh⁻¹]</param>
/// <param name="HumidityLimit">Relative humidity about which it runs, 0 to 1; null: always on.</param>
public sealed record BoxDehumidifier(double Capacity, double LitresPerKilowattHour, double? HumidityLimit);
