using Rickyard.Core.Boxes;

namespace Rickyard.HotBox;

/// <summary>One curve of the box as it leaves the program.</summary>
/// <param name="Name">With its unit.</param>
/// <param name="Values">Where it comes from.</param>
/// <param name="Scale">From the unit inside to the unit named.</param>
/// <param name="Decimals">Digits kept.</param>
internal sealed record BoxColumn(string Name, Func<BoxSeries, double[]> Values, double Scale, int Decimals)
{
    /// <summary>Every curve, in the order they are written.</summary>
    public static IReadOnlyList<BoxColumn> All { get; } =
    [
        new("air_temp_c", box => box.AirCelsius, 1, 2),
        new("air_rh_pct", box => box.AirHumidity, 100, 2),
        new("wall_temp_c", box => box.WallCelsius, 1, 2),
        new("heater_kw", box => box.HeaterWatts, 1e-3, 4),
        new("water_kg", box => box.WaterKilograms, 1, 4),
        new("energy_kwh", box => box.EnergyJoules, 1 / EnergyCost.JoulesPerKilowattHour, 4),
    ];
}
