namespace Rickyard.Core.Boxes.Schedules;

/// <summary>One schedule tried: a setting, a humidity held or not, when each class is pulled, and a closed rest; with what comes of it.</summary>
/// <param name="Celsius">Thermostat setting while drying. [°C]</param>
/// <param name="HumidityLimit">Relative humidity about which the vent opens, 0 to 1; null: vent as the box has it.</param>
/// <param name="PullMean">Mean moisture at which all classes are pulled; null where each is pulled at its own. [kg kg⁻¹]</param>
/// <param name="RestCelsius">Of the closed rest. [°C]</param>
/// <param name="Classes">Each class.</param>
/// <param name="Days">From loading to the last class ready. [d]</param>
/// <param name="EnergyJoules">Bought, drying and rest. [J]</param>
/// <param name="WaterKilograms">Taken off the charge. [kg]</param>
/// <param name="Gap">Largest core-to-shell gap of any class at the end. [kg kg⁻¹]</param>
/// <param name="Miss">How far the worst class ends from the goal: core (and for even wood also mean and shell) outside the band. [kg kg⁻¹]</param>
public sealed record ScheduleCandidate(
    double Celsius, double? HumidityLimit, double? PullMean, double RestCelsius, IReadOnlyList<ClassPull> Classes, double Days, double EnergyJoules,
    double WaterKilograms, double Gap, double Miss);
