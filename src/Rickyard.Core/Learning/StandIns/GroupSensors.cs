using Rickyard.Core.Drying;
using Rickyard.Core.Measuring;
using Rickyard.Core.Splits;

namespace Rickyard.Core.Learning.StandIns;

/// <summary>Reads sensors off the members of one group as they dry; remembers where the pins are in each grid.</summary>
internal sealed class GroupSensors
{
    private readonly Dictionary<(SplitGrid Grid, Pins Pins), PinView> _views = [];
    private readonly Dictionary<SplitGrid, double[]> _sections = new(ReferenceEqualityComparer.Instance);

    /// <summary>One sensor of one member. [kg kg⁻¹, or kg for masses]</summary>
    internal double Read(Sensor sensor, SplitSolver solver, SplitGrid grid, int lane, in SplitReading reading) => sensor.Kind switch
    {
        SensorKind.Mean => reading.Mean,
        SensorKind.Core => reading.Core,
        SensorKind.Shell => reading.Shell,
        SensorKind.End => reading.End,
        SensorKind.Mass => reading.Mass,
        SensorKind.DryMass => solver.DryMass(lane),
        SensorKind.Section => SplitProbes.Read(Section(grid), solver.Moisture, lane, solver.Lanes),
        _ => View(grid, sensor.Pins!).Read(solver.Moisture, lane, solver.Lanes),
    };

    private PinView View(SplitGrid grid, Pins pins)
    {
        if (!_views.TryGetValue((grid, pins), out var view)) _views.Add((grid, pins), view = PinView.Of(grid, pins));
        return view;
    }

    /// <summary>Weights of the cells at mid-length.</summary>
    private double[] Section(SplitGrid grid)
    {
        if (_sections.TryGetValue(grid, out var weights)) return weights;
        var along = grid.CountAlong(Axis.Longitudinal);
        weights = [.. grid.Volumes.Select((volume, cell) => cell % along == 0 ? volume : 0)];
        var total = weights.Sum();
        for (var cell = 0; cell < weights.Length; cell++) weights[cell] /= total;
        _sections.Add(grid, weights);
        return weights;
    }
}
