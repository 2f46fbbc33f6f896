using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>
/// The part of a piece that a pair of pins feels: the cells that the needles pass, each by its length. Layers conduct side by side, the wetter far better, so bare pins show
/// nearly the wettest layer they touch and insulated ones what is at their tips (physics.md, V1 to V3).
/// </summary>
public sealed class PinView
{
    private const int Points = 40;

    private readonly int[] _cells;
    private readonly double[] _shares;

    private PinView(int[] cells, double[] shares) => (_cells, _shares) = (cells, shares);

    /// <summary>Finds it.</summary>
    /// <param name="grid">The grid of the piece.</param>
    /// <param name="pins">How the pins go in.</param>
    public static PinView Of(SplitGrid grid, Pins pins)
    {
        var path = new PinPath(grid, pins);
        var cells = Enumerable.Range(0, Points).Select(point => path.CellAt((point + 0.5) / Points)).GroupBy(cell => cell).ToArray();
        return new([.. cells.Select(cell => cell.Key)], [.. cells.Select(cell => cell.Count() / (double)Points)]);
    }

    /// <summary>Moisture of wood that is the same throughout and would show the same. [kg kg⁻¹]</summary>
    /// <param name="state">Interleaved cell values. [kg kg⁻¹]</param>
    /// <param name="lane">Which member.</param>
    /// <param name="lanes">How many are interleaved.</param>
    public double Read(ReadOnlySpan<double> state, int lane = 0, int lanes = 1)
    {
        double conductance = 0;
        for (var i = 0; i < _cells.Length; i++) conductance += _shares[i] * PinConductance.Of(state[_cells[i] * lanes + lane]);
        return PinConductance.Moisture(conductance);
    }
}
