namespace Rickyard.Core.Boxes;

/// <summary>The box through time; all arrays run along the report times.</summary>
/// <param name="AirCelsius">Of the air, at the middle shelf. [°C]</param>
/// <param name="AirHumidity">Relative humidity there, 0 to 1.</param>
/// <param name="WallCelsius">Inside face of the walls. [°C]</param>
/// <param name="HeaterWatts">Heat given, mean since the report before. [W]</param>
/// <param name="WaterKilograms">Water the charge has lost since the start. [kg]</param>
/// <param name="EnergyJoules">Energy bought since the start: heater by its efficiency, fan, dehumidifier. [J]</param>
public sealed record BoxSeries(
    double[] AirCelsius, double[] AirHumidity, double[] WallCelsius, double[] HeaterWatts, double[] WaterKilograms, double[] EnergyJoules);
