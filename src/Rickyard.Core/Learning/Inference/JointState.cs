using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>Lot and those pieces that are walked over as one list of standard normal numbers: the lot's, then each piece's own.</summary>
internal sealed class JointState
{
    private readonly LotLikelihood _likelihood;
    private readonly int _own;
    private readonly int[] _walked;

    /// <summary>For a lot.</summary>
    internal JointState(LotUnknowns unknowns, StandIn standIn, ObservedLot observed)
    {
        _likelihood = new(unknowns, standIn, observed);
        Lot = new(unknowns.Count, observed.Meters.Count, standIn.Weather.Count);
        States = [.. observed.Pieces.Select(piece => new PieceState(unknowns.PieceOwn.Count, unknowns.Count, piece.Outputs.Length))];
        _walked = [.. Enumerable.Range(0, observed.Pieces.Count).Where(piece => !observed.Pieces[piece].IsFolded)];
        _own = unknowns.PieceOwn.Count + 1;
    }

    /// <summary>The lot.</summary>
    internal LotState Lot { get; }

    /// <summary>All observed pieces.</summary>
    internal PieceState[] States { get; }

    /// <summary>Places of those that are walked over.</summary>
    internal IReadOnlyList<int> Walked => _walked;

    /// <summary>How likelihoods are had.</summary>
    internal LotLikelihood Likelihood => _likelihood;

    /// <summary>Numbers in all.</summary>
    internal int Count => Lot.Numbers.Length + _walked.Length * _own;

    /// <summary>
    /// Numbers that a piece's observations depend on, but for the spread between pieces: that one bends the others about so much that it is moved by itself.
    /// </summary>
    internal IEnumerable<int> Moving(int piece)
    {
        var lot = Enumerable.Range(0, Lot.Numbers.Length).Where(i => i != Lot.PieceSpreadPlace);
        var walked = Array.IndexOf(_walked, piece);
        return walked < 0 ? lot : lot.Concat(Enumerable.Range(Lot.Numbers.Length + walked * _own, _own));
    }

    /// <summary>Days of a piece's observations.</summary>
    internal double[] Days(int piece) => [.. _likelihood.Observed.Pieces[piece].Terms.Select(term => term.Day)];

    /// <summary>Take over numbers; log likelihood there.</summary>
    internal double Set(ReadOnlySpan<double> numbers)
    {
        Take(numbers);
        return Follow();
    }

    /// <summary>Bring the pieces in line with the lot; log likelihood of all that was observed.</summary>
    internal double Follow()
    {
        foreach (var piece in _walked) _likelihood.Follow(Lot, States[piece], piece);
        Beside = _likelihood.Beside(Lot);
        return Known();
    }

    /// <summary>Log likelihood of all but the walked pieces, as of the last time it was had.</summary>
    internal double Beside { get; set; }

    /// <summary>Log likelihood of all that was observed, as it stands.</summary>
    internal double Known()
    {
        var sum = Beside;
        foreach (var piece in _walked) sum += States[piece].Likelihood;
        return sum;
    }

    /// <summary>The numbers as they stand.</summary>
    internal void Get(Span<double> numbers)
    {
        Lot.Numbers.CopyTo(numbers);
        for (var i = 0; i < _walked.Length; i++) States[_walked[i]].Own.CopyTo(numbers[(Lot.Numbers.Length + i * _own)..]);
    }

    /// <summary>How a piece's observations pull at some numbers; a folded piece's own are at their middle.</summary>
    internal Pull[] Pulls(ReadOnlySpan<double> numbers, int piece, bool believed)
    {
        Take(numbers);
        return _likelihood.Pulls(Lot, States[piece], piece, believed);
    }

    /// <summary>How what is expected of a folded piece's reading changes with each of the piece's own numbers.</summary>
    internal double[] OwnSlopes(ReadOnlySpan<double> numbers, int piece, double nudge)
    {
        var expected = Pulls(numbers, piece, believed: true)[0].Expected;
        var (own, slopes) = (States[piece].Own, new double[_own]);
        for (var k = 0; k < _own; k++)
        {
            own[k] = nudge;
            slopes[k] = (_likelihood.Pulls(Lot, States[piece], piece, believed: true)[0].Expected - expected) / nudge;
            own[k] = 0;
        }

        return slopes;
    }

    private void Take(ReadOnlySpan<double> numbers)
    {
        numbers[..Lot.Numbers.Length].CopyTo(Lot.Numbers);
        for (var i = 0; i < _walked.Length; i++) numbers.Slice(Lot.Numbers.Length + i * _own, _own).CopyTo(States[_walked[i]].Own);
    }
}
