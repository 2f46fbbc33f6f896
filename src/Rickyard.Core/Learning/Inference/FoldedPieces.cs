using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// Pieces of which one thing was observed. What such a piece has of its own moves the one reading along one direction, so it is summed over there and not walked over: fifty
/// readings of fifty splits then cost the chains no numbers of their own (physics.md, L8).
/// </summary>
internal sealed class FoldedPieces
{
    /// <summary>Where the stand-in is asked; between, logarithms of outputs are a parabola. [standard deviations]</summary>
    private const double Apart = 1.5;

    private const int HalfPoints = 7;
    private const double Step = 0.45;

    private static readonly (double Point, double Weight)[] Rule = Points();

    private readonly LotLikelihood _likelihood;
    private readonly int[] _pieces;
    private readonly PieceState[] _states;
    private double[][] _directions;

    /// <summary>Of a lot.</summary>
    internal FoldedPieces(LotLikelihood likelihood, ObservedLot observed, LotUnknowns unknowns)
    {
        _likelihood = likelihood;
        _pieces = [.. Enumerable.Range(0, observed.Pieces.Count).Where(piece => observed.Pieces[piece].IsFolded)];
        _states = [.. _pieces.Select(piece => new PieceState(unknowns.PieceOwn.Count, unknowns.Count, observed.Pieces[piece].Outputs.Length))];
        _directions = [.. _states.Select(state => new double[state.Own.Length])];
    }

    /// <summary>Places of the pieces in the list of all.</summary>
    internal IReadOnlyList<int> Pieces => _pieces;

    /// <summary>Direction, of length 1, in which each piece's own numbers move its reading.</summary>
    internal IReadOnlyList<double[]> Directions
    {
        get => _directions;
        set => _directions = [.. value];
    }

    /// <summary>Log likelihood of all of them.</summary>
    internal double Likelihood(LotState lot)
    {
        double sum = 0;
        for (var i = 0; i < _pieces.Length; i++) sum += One(lot, i);
        return sum;
    }

    private double One(LotState lot, int i)
    {
        var (state, direction) = (_states[i], _directions[i]);
        var outputs = state.Logs.Length;
        Span<double> middle = stackalloc double[outputs], slope = stackalloc double[outputs], bend = stackalloc double[outputs];
        Ask(lot, i, 0);
        state.Logs.CopyTo(middle);
        Ask(lot, i, -Apart);
        state.Logs.CopyTo(slope);
        Ask(lot, i, Apart);
        for (var o = 0; o < outputs; o++)
            (slope[o], bend[o]) = ((state.Logs[o] - slope[o]) / (2 * Apart), (state.Logs[o] + slope[o] - 2 * middle[o]) / (2 * Apart * Apart));
        double density = 0;
        foreach (var (point, weight) in Rule)
        {
            for (var o = 0; o < outputs; o++) state.Logs[o] = middle[o] + point * (slope[o] + point * bend[o]);
            state.Own[^1] = point * direction[^1];
            _likelihood.Weigh(lot, state, _pieces[i]);
            density += weight * Math.Exp(state.Likelihood);
        }

        return Math.Log(density);
    }

    private void Ask(LotState lot, int i, double point)
    {
        var (state, direction) = (_states[i], _directions[i]);
        for (var k = 0; k < direction.Length; k++) state.Own[k] = point * direction[k];
        _likelihood.Place(lot, state, _pieces[i]);
    }

    /// <summary>A fine even rule over a standard normal number, since a reading may be far sharper than the spread between pieces.</summary>
    private static (double, double)[] Points()
    {
        double[] points = [.. Enumerable.Range(-HalfPoints, 2 * HalfPoints + 1).Select(i => i * Step)];
        var whole = points.Sum(point => Math.Exp(-point * point / 2));
        return [.. points.Select(point => (point, Math.Exp(-point * point / 2) / whole))];
    }
}
