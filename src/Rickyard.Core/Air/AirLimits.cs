using static System.FormattableString;

using Rickyard.Core.Quantities;

namespace Rickyard.Core.Air;

/// <summary>What moist air cannot be, in words for the person who gave it.</summary>
internal static class AirLimits
{
    private const double LowestCelsius = -100;
    private const double HighestCelsius = 200;

    // Rounding may lift saturated air a hair above saturation; more than this is supersaturated.
    private const double Slack = 1 + 1e-6;

    public static IReadOnlyList<Problem> ProblemsOf(Temperature temperature, Pressure vaporPressure, Pressure pressure, string field)
    {
        if (ProblemsOfRange(temperature, pressure) is { Count: > 0 } outside) return outside;
        var saturation = SaturationPressure.OverWater(temperature.Kelvins);
        if (vaporPressure.Pascals >= pressure.Pascals) return [Boiling(temperature, vaporPressure, pressure, saturation, field)];
        return vaporPressure.Pascals > saturation * Slack ? [Supersaturated(temperature, vaporPressure, saturation, field)] : [];
    }

    public static IReadOnlyList<Problem> ProblemsOfWetBulb(Temperature temperature, Temperature wetBulb, Pressure pressure)
    {
        if (ProblemsOfRange(temperature, pressure) is { Count: > 0 } outside) return outside;
        var lowest = Temperature.FromKelvins(Psychrometrics.WetBulb(temperature.Kelvins, 0, pressure.Pascals));
        if (wetBulb.Kelvins > temperature.Kelvins + 1e-6 && wetBulb.Celsius >= 0)
            return [TooWarm(temperature, wetBulb)];
        return wetBulb.Kelvins < lowest.Kelvins - 1e-6 ? [TooCold(temperature, wetBulb, lowest)] : [];
    }

    private static List<Problem> ProblemsOfRange(Temperature temperature, Pressure pressure)
    {
        var problems = new List<Problem>();
        if (temperature.Celsius is < LowestCelsius or > HighestCelsius)
            problems.Add(new("temperature", Invariant($"Air at {temperature} is outside what the formulas of moist air serve."), "Enter -100 to 200 °C."));
        if (pressure.Pascals <= 0)
            problems.Add(new("pressure", $"Air pressure of {pressure} is not above zero.", "Enter the absolute pressure, about 101325 Pa at the sea."));
        return problems;
    }

    private static Problem Boiling(Temperature temperature, Pressure vaporPressure, Pressure pressure, double saturation, string field)
    {
        double vapor = vaporPressure.Pascals / 1000, whole = pressure.Pascals / 1000;
        var ceiling = Math.Floor(1000 * Math.Min(1, pressure.Pascals / saturation)) / 10;
        return new(
            field,
            Invariant($"At {temperature} this means vapour at {vapor:0.0} kPa, but the whole air has only {whole:0.0} kPa."),
            Invariant($"At this temperature and pressure relative humidity must stay below {ceiling:0.0} %; pure steam is not air."));
    }

    private static Problem Supersaturated(Temperature temperature, Pressure vaporPressure, double saturation, string field)
    {
        double vapor = vaporPressure.Pascals, percent = 100 * vapor / saturation;
        return new(
            field,
            Invariant($"At {temperature} this means vapour at {vapor:0.#} Pa, {percent:0.0} % relative humidity; water condenses from {saturation:0.#} Pa up."),
            "Enter a value that keeps relative humidity at or below 100 %: a dew point not above the air temperature.");
    }

    private static Problem TooWarm(Temperature temperature, Temperature wetBulb) => new(
        "wet bulb",
        $"The wet bulb, {wetBulb}, is above the dry bulb, {temperature}.",
        "Evaporation only cools a wick: enter a wet bulb at or below the dry bulb.");

    private static Problem TooCold(Temperature temperature, Temperature wetBulb, Temperature lowest) => new(
        "wet bulb",
        $"A wet bulb of {wetBulb} cannot be reached at {temperature}: even bone-dry air cools a wick only to {lowest}.",
        $"Enter {lowest} to {temperature}, and check that the wick was wet and the air moved past it.");
}
