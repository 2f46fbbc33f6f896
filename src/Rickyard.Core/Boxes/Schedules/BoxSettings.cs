namespace Rickyard.Core.Boxes.Schedules;

/// <summary>A way to run a box while it dries: what a search varies.</summary>
/// <param name="Celsius">Thermostat; null for a box without a heater. [°C]</param>
/// <param name="HumidityLimit">About which the vent opens; null: as the box has it.</param>
internal sealed record BoxSettings(double? Celsius, double? HumidityLimit)
{
    /// <summary>Coolest setting worth trying. [°C]</summary>
    private const double Coolest = 30;

    /// <summary>Steps between settings tried. [K]</summary>
    private const double Apart = 8;

    private const int MostSettings = 5;
    private static readonly double?[] Humidities = [null, 0.35, 0.5, 0.65, 0.8];

    /// <summary>All ways tried for a box, warmest first.</summary>
    internal static IReadOnlyList<BoxSettings> For(BoxDescription box, double highestCelsius)
    {
        var humidities = box.Vent is { Flow: > 0 } or { Opening: > 0 } ? Humidities : [null];
        double?[] temperatures = box.Heater.Power > 0
            ? [.. Enumerable.Range(0, MostSettings).Select(i => highestCelsius - Apart * i).Where((celsius, i) => i == 0 || celsius >= Coolest).Select(celsius => (double?)celsius)]
            : [null];
        return [.. temperatures.SelectMany(celsius => humidities.Select(humidity => new BoxSettings(celsius, humidity)))];
    }

    /// <summary>The stage that dries so.</summary>
    internal BoxStage Drying(BoxDescription box, double? days) =>
        new(StageKind.Drying, days, Celsius, HumidityLimit is { } limit ? box.Vent with { HumidityLimit = limit } : null);
}
