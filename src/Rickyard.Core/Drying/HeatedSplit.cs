using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// One split whose temperature is followed as a field, for when minutes of core temperature matter (heat treatment, warming frozen wood). Heat and water
/// take turns in short steps: heat with the surface humidity just found, then water with the temperatures just found (physics.md, H7). Wood that starts below
/// 0 °C is frozen: its free water has to melt (H8).
/// </summary>
public sealed class HeatedSplit
{
    private const double LongestTurn = 120, HeatTolerance = 0.02;
    private readonly LaneGrid _grid;
    private readonly SplitLaw _water;
    private readonly HeatLaw _heat;
    private readonly AdaptiveDriver _waterDriver, _heatDriver;
    private readonly double[] _volumeShare, _celsius;

    /// <summary>A split with the same moisture and temperature throughout.</summary>
    /// <param name="grid">Its grid.</param>
    /// <param name="table">Diffusivities of the wood.</param>
    /// <param name="wood">The wood.</param>
    /// <param name="air">Surroundings through time.</param>
    /// <param name="moisture">At the start. [kg kg⁻¹]</param>
    /// <param name="celsius">At the start. [°C]</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public HeatedSplit(SplitGrid grid, MobilityTable table, LaneWood wood, AirSeries air, double moisture, double celsius, double pressure = 101325)
        : this(grid, table, wood, air, [.. Enumerable.Repeat(moisture, grid.Count)], celsius, pressure)
    {
    }

    /// <summary>A split with a moisture of its own in every cell and the same temperature throughout.</summary>
    /// <param name="grid">Its grid.</param>
    /// <param name="table">Diffusivities of the wood.</param>
    /// <param name="wood">The wood.</param>
    /// <param name="air">Surroundings through time.</param>
    /// <param name="moisture">Of each cell at the start. [kg kg⁻¹]</param>
    /// <param name="celsius">At the start, -40 to 110; below -2 its free water is ice. [°C]</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public HeatedSplit(SplitGrid grid, MobilityTable table, LaneWood wood, AirSeries air, ReadOnlySpan<double> moisture, double celsius, double pressure = 101325)
    {
        _grid = new(grid);
        _water = new(_grid, table, [wood], air, pressure);
        _waterDriver = new(_grid, _water, StepControl.Forecast);
        moisture.CopyTo(_waterDriver.Stepper.State);
        _celsius = [.. Enumerable.Repeat(celsius, grid.Count)];
        double[] reference = [.. _waterDriver.Stepper.State.Select(cell => HeatContent.Near(cell, celsius).Thawed)];
        var cells = _grid.ForHeat([.. reference.Select(capacity => wood.BasicDensity * capacity)]);
        _heat = new(cells, wood, reference, celsius, air, pressure);
        _heatDriver = new(cells, _heat, new(HeatTolerance, 0, 1, LongestTurn, AllowNegative: true));
        var total = grid.Volumes.Sum();
        _volumeShare = [.. grid.Volumes.Select(volume => volume / total)];
        _water.Hold(celsius, celsius);
        _water.Begin(0, 1, _waterDriver.Stepper.State);
        _waterDriver.Stepper.Step(1e-6);
    }

    /// <summary>Time reached. [s]</summary>
    public double Time => _heatDriver.Time;

    /// <summary>Temperature of the coldest cell. [°C]</summary>
    public double Coldest => _celsius.Min();

    /// <summary>Temperature of every cell. [°C]</summary>
    public ReadOnlySpan<double> Celsius => _celsius;

    /// <summary>Moisture of every cell. [kg kg⁻¹]</summary>
    public ReadOnlySpan<double> Moisture => _waterDriver.Stepper.State;

    /// <summary>Walk to a time. [s]</summary>
    public void AdvanceTo(double time)
    {
        while (Time < time)
        {
            _heat.Renew(_waterDriver.Stepper.State, _water.SurfaceHumidity, _celsius, _heatDriver.Stepper.State);
            _heatDriver.Advance(time);
            _heat.Evaluate(_heatDriver.Stepper.State);
            _heat.Celsius.CopyTo(_celsius);
            _water.Hold(SplitProbes.Read(_volumeShare, _celsius, 0, 1), _heat.MeanSurface);
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
