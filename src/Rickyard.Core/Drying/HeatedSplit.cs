using Rickyard.Core.Quantities;
using Rickyard.Core.Splits;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Drying;

/// <summary>
/// One split whose temperature is followed as a field, for when minutes of core temperature matter (heat treatment, warming frozen wood). Heat and water
/// take turns in short steps: heat with the surface humidity just found, then water with the temperatures just found (physics.md, H7).
/// </summary>
public sealed class HeatedSplit
{
    private const double LongestTurn = 120, HeatTolerance = 0.02;
    private readonly LaneGrid _grid;
    private readonly SplitLaw _water;
    private readonly HeatLaw _heat;
    private readonly AdaptiveDriver _waterDriver, _heatDriver;
    private readonly double[] _volumeShare;

    /// <summary>A split with the same moisture and temperature throughout.</summary>
    /// <param name="grid">Its grid.</param>
    /// <param name="table">Diffusivities of the wood.</param>
    /// <param name="wood">The wood.</param>
    /// <param name="air">Surroundings through time.</param>
    /// <param name="moisture">At the start. [kg kg⁻¹]</param>
    /// <param name="celsius">At the start. [°C]</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public HeatedSplit(SplitGrid grid, MobilityTable table, LaneWood wood, AirSeries air, double moisture, double celsius, double pressure = 101325)
    {
        _grid = new(grid);
        _water = new(_grid, table, [wood], air, pressure);
        _waterDriver = new(_grid, _water, StepControl.Forecast);
        Array.Fill(_waterDriver.Stepper.State, moisture);
        var capacity = wood.BasicDensity * WoodThermal.HeatCapacity(moisture, celsius + Temperature.IcePointKelvins);
        var cells = _grid.ForHeat([.. Enumerable.Repeat(capacity, grid.Count)]);
        _heat = new(cells, wood, air, pressure);
        _heatDriver = new(cells, _heat, new(HeatTolerance, 0, 1, LongestTurn, AllowNegative: true));
        Array.Fill(_heatDriver.Stepper.State, celsius);
        var total = grid.Volumes.Sum();
        _volumeShare = [.. grid.Volumes.Select(volume => volume / total)];
        _water.Hold(celsius, celsius);
        _water.Begin(0, 1, _waterDriver.Stepper.State);
        _waterDriver.Stepper.Step(1e-6);
    }

    /// <summary>Time reached. [s]</summary>
    public double Time => _heatDriver.Time;

    /// <summary>Temperature of the coldest cell. [°C]</summary>
    public double Coldest => _heatDriver.Stepper.State.Min();

    /// <summary>Temperature of every cell. [°C]</summary>
    public ReadOnlySpan<double> Celsius => _heatDriver.Stepper.State;

    /// <summary>Moisture of every cell. [kg kg⁻¹]</summary>
    public ReadOnlySpan<double> Moisture => _waterDriver.Stepper.State;

    /// <summary>Walk to a time. [s]</summary>
    public void AdvanceTo(double time)
    {
        while (Time < time)
        {
            _heat.Renew(_waterDriver.Stepper.State, _heatDriver.Stepper.State, _water.SurfaceHumidity);
            _heatDriver.Advance(time);
            _water.Hold(SplitProbes.Read(_volumeShare, _heatDriver.Stepper.State, 0, 1), _heat.MeanSurface);
            while (_waterDriver.Time < Time) _waterDriver.Advance(Time);
        }
    }

    /// <summary>When the coldest cell first reaches a temperature, looked at every so often; null when it has not by the end. [s]</summary>
    public double? TimeToReach(double celsius, double every, double end)
    {
        var before = Coldest;
        while (Time < end)
        {
            AdvanceTo(Math.Min(end, Time + every));
            var now = Coldest;
            if (now >= celsius) return Time - every * (now - celsius) / Math.Max(1e-9, now - before);
            before = now;
        }

        return null;
    }
}
