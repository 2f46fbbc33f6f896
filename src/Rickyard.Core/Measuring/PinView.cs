using Rickyard.Core.Splits;

namespace Rickyard.Core.Measuring;

/// <summary>The part of a piece that a pair of pins feels, as a place in its grid.</summary>
public sealed class PinView
{
    private PinView()
    {
    }

    /// <summary>Finds it.</summary>
    /// <param name="grid">The grid of the piece.</param>
    /// <param name="pins">How the pins go in.</param>
    public static PinView Of(SplitGrid grid, Pins pins) => throw new NotImplementedException();

    /// <summary>Moisture of wood that is the same throughout and would show the same. [kg kg⁻¹]</summary>
    /// <param name="state">Interleaved cell values. [kg kg⁻¹]</param>
    /// <param name="lane">Which member.</param>
    /// <param name="lanes">How many are interleaved.</param>
    public double Read(ReadOnlySpan<double> state, int lane = 0, int lanes = 1) => throw new NotImplementedException();
}
