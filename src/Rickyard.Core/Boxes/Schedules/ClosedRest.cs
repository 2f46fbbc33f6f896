using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>A class closed up in its own vapour at one temperature; used again and again from other starts.</summary>
internal sealed class ClosedRest
{
    private const double SecondsPerDay = 86400;
    private readonly ChargeShape _shape;
    private readonly LaneGrid _grid;
    private readonly SplitLaw _law;
    private readonly AdaptiveDriver _driver;

    internal ClosedRest(ChargeShape shape, double celsius, double pressure)
    {
        var kelvins = celsius + Temperature.IcePointKelvins;
        var air = new Surroundings(
            kelvins, 0.5 * SaturationPressure.OverWater(kelvins), SurfaceTransfer.StillAir(shape.Grid.Split.SurfaceDiameter, kelvins, pressure), FreshAir: Surroundings.ClosedUp);
        (_shape, _grid) = (shape, new(shape.Grid));
        _law = new(_grid, shape.Table, [shape.Wood], AirSeries.Steady(air), pressure);
        _driver = new(_grid, _law, StepControl.Forecast);
    }

    /// <summary>Rest from a field for some days, until <paramref name="done"/> of the readings; gives what was read at every look, the start among them.</summary>
    /// <param name="field">At the start. [kg kg⁻¹]</param>
    /// <param name="celsius">Of the wood at the start. [°C]</param>
    /// <param name="days">At most. [d]</param>
    /// <param name="looks">How often it is looked at.</param>
    /// <param name="done">Whether it may stop.</param>
    internal IReadOnlyList<(double Days, SplitReading Reading)> Run(double[] field, double celsius, double days, int looks, Func<SplitReading, bool> done)
    {
        field.CopyTo(_driver.Stepper.State, 0);
        _driver.Restart(0);
        _law.SetCelsius(celsius);
        List<(double Days, SplitReading Reading)> read = [(0, Read())];
        for (var look = 1; look <= looks && !done(read[^1].Reading); look++)
        {
            while (_driver.Time < days * SecondsPerDay * look / looks) _driver.Advance(days * SecondsPerDay * look / looks);
            read.Add((_driver.Time / SecondsPerDay, Read()));
        }

        return read;
    }

    private SplitReading Read() => _shape.Read(_driver.Stepper.State, _law.Celsius(0));
}
