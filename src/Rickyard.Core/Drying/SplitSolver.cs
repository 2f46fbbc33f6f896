using Rickyard.Core.Splits;

namespace Rickyard.Core.Drying;

/// <summary>
/// One split, or four members of an ensemble side by side, drying through a series of air: set a state, advance, read it off. Keeps the books: what the wood
/// lost equals what <see cref="WaterGivenOff"/> says, to rounding.
/// </summary>
public sealed class SplitSolver
{
    private readonly LaneGrid _grid;
    private readonly SplitLaw _law;
    private readonly AdaptiveDriver _driver;
    private readonly SplitProbes[] _probes;
    private readonly LaneWood[] _woods;
    private readonly double[] _givenOff, _lost;

    /// <summary>A solver for one or four members.</summary>
    /// <param name="grids">Their grids, equal in layout.</param>
    /// <param name="table">Diffusivities of the wood.</param>
    /// <param name="woods">What each member has of its own.</param>
    /// <param name="air">Surroundings through time.</param>
    /// <param name="control">How exactly time is walked.</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    public SplitSolver(
        IReadOnlyList<SplitGrid> grids, MobilityTable table, IReadOnlyList<LaneWood> woods, AirSeries air, StepControl? control = null, double pressure = 101325)
    {
        _grid = new(grids.ToArray());
        _woods = [.. woods];
        _law = new(_grid, table, woods, air, pressure);
        _driver = new(_grid, _law, control ?? StepControl.Forecast);
        _probes = [.. grids.Select(SplitProbes.Of)];
        (_givenOff, _lost) = (new double[_grid.Lanes], new double[_grid.Lanes]);
    }

    /// <summary>Members solved.</summary>
    public int Lanes => _grid.Lanes;

    /// <summary>Moisture of all cells, interleaved by member; may be written before the first advance. [kg kg⁻¹]</summary>
    public Span<double> Moisture => _driver.Stepper.State;

    /// <summary>Time reached. [s]</summary>
    public double Time => _driver.Time;

    /// <summary>Steps accepted and rejected so far.</summary>
    public (int Accepted, int Rejected) Steps => (_driver.Accepted, _driver.Rejected);

    /// <summary>Air of the last step.</summary>
    public StepAir Air => _law.Air;

    /// <summary>Set one member's moisture.</summary>
    public void SetMoisture(int lane, ReadOnlySpan<double> cells)
    {
        for (var cell = 0; cell < cells.Length; cell++) Moisture[cell * Lanes + lane] = cells[cell];
    }

    /// <summary>One member's moisture, copied out. [kg kg⁻¹]</summary>
    public double[] MoistureOf(int lane) => [.. Enumerable.Range(0, _grid.Layout.Count).Select(cell => _driver.Stepper.State[cell * Lanes + lane])];

    /// <summary>Set every member's temperature. [°C]</summary>
    public void SetCelsius(double celsius) => _law.SetCelsius(celsius);

    /// <summary>Walk to a time. [s]</summary>
    public void AdvanceTo(double time)
    {
        while (Time < time)
        {
            _driver.Advance(time);
            Book();
        }
    }

    /// <summary>Read one member.</summary>
    public SplitReading Read(int lane)
    {
        var probes = _probes[lane];
        double Value(double[] weights) => SplitProbes.Read(weights, _driver.Stepper.State, lane, Lanes);
        double mean = Value(probes.Mean), core = Value(probes.Core);
        return new(mean, core, Value(probes.Shell), Value(probes.End), _law.Celsius(lane), DryMass(lane) * (1 + mean), _law.OutsideShare(lane, core));
    }

    /// <summary>Oven-dry mass of one member's whole piece. [kg]</summary>
    public double DryMass(int lane) => _grid.Grids[lane].Split.Volume * _woods[lane].BasicDensity;

    /// <summary>Water one member has given off through its faces since the start, less what it took up, by the faces' own books. [kg]</summary>
    public double WaterGivenOff(int lane) => _givenOff[lane] * _woods[lane].BasicDensity * _grid.Layout.Copies;

    /// <summary>Outflow of the last step, added with compensation so that a year of small steps keeps its last digits.</summary>
    private void Book()
    {
        var outflow = _driver.Stepper.Outflow;
        for (var k = 0; k < outflow.Length; k++)
        {
            var lane = k % Lanes;
            var add = outflow[k] - _lost[lane];
            var sum = _givenOff[lane] + add;
            _lost[lane] = sum - _givenOff[lane] - add;
            _givenOff[lane] = sum;
        }
    }
}
