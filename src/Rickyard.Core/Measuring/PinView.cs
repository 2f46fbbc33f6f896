using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>
/// The part of a piece that a pair of pins feels, as a place in its grid. Layers between bare pins conduct side by side, so the pins show moisture at the mean
/// conductance along them: near the wettest layer they pass (physics.md, V1 to V3).
/// </summary>
public sealed class PinView
{
    private readonly int[] _starts, _cells;
    private readonly double[] _shares;

    private PinView(IReadOnlyList<(int Cell, double Share)[]> points)
    {
        _cells = [.. points.SelectMany(point => point).Select(part => part.Cell)];
        _shares = [.. points.SelectMany(point => point).Select(part => part.Share)];
        _starts = new int[points.Count + 1];
        for (var point = 0; point < points.Count; point++) _starts[point + 1] = _starts[point] + points[point].Length;
    }

    /// <summary>
    /// Finds it. Pins into the side of a piece with bark count their depth from the wood under it. A round has no split face and a block no bark: the one shows
    /// its side, the other its wide face.
    /// </summary>
    /// <param name="grid">The grid of the piece.</param>
    /// <param name="pins">How the pins go in.</param>
    public static PinView Of(SplitGrid grid, Pins pins) => new([.. PinPath.Of(grid.Split, pins).Select(point => point.Cells(grid).ToArray())]);

    /// <summary>Moisture of wood that is the same throughout and would show the same; above fibre saturation too, though a meter only says "wet" there. [kg kg⁻¹]</summary>
    /// <param name="state">Interleaved cell values. [kg kg⁻¹]</param>
    /// <param name="lane">Which member.</param>
    /// <param name="lanes">How many are interleaved.</param>
    public double Read(ReadOnlySpan<double> state, int lane = 0, int lanes = 1)
    {
        double conductance = 0;
        for (var point = 0; point + 1 < _starts.Length; point++) conductance += PinConductance.Of(Moisture(state, point, lane, lanes));
        return PinConductance.Moisture(conductance / (_starts.Length - 1));
    }

    private double Moisture(ReadOnlySpan<double> state, int point, int lane, int lanes)
    {
        double moisture = 0;
        for (var part = _starts[point]; part < _starts[point + 1]; part++) moisture += _shares[part] * state[_cells[part] * lanes + lane];
        return moisture;
    }
}
