using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>Lot and observed pieces as one list of standard normal numbers: the lot's, then each piece's own.</summary>
internal sealed class JointState
{
    private readonly LotLikelihood _likelihood;
    private readonly int _own;

    /// <summary>For a lot.</summary>
    internal JointState(LotUnknowns unknowns, StandIn standIn, ObservedLot observed)
    {
        _likelihood = new(unknowns, standIn, observed);
        Lot = new(unknowns.Count, observed.Meters.Count, standIn.Weather.Count);
        States = [.. observed.Pieces.Select(piece => new PieceState(unknowns.PieceOwn.Count, unknowns.Count, piece.Outputs.Length))];
        _own = unknowns.PieceOwn.Count + 1;
    }

    /// <summary>The lot.</summary>
    internal LotState Lot { get; }

    /// <summary>The pieces.</summary>
    internal PieceState[] States { get; }

    /// <summary>How likelihoods are had.</summary>
    internal LotLikelihood Likelihood => _likelihood;

    /// <summary>Observed pieces.</summary>
    internal int Pieces => States.Length;

    /// <summary>Numbers in all.</summary>
    internal int Count => Lot.Numbers.Length + Pieces * _own;

    /// <summary>
    /// Numbers that a piece's observations depend on, but for the spread between pieces: that one bends the others about so much that it is moved by itself.
    /// </summary>
    internal IEnumerable<int> Moving(int piece) =>
        Enumerable.Range(0, Lot.Numbers.Length).Where(i => i != Lot.PieceSpreadPlace).Concat(Enumerable.Range(Lot.Numbers.Length + piece * _own, _own));

    /// <summary>Days of a piece's observations.</summary>
    internal double[] Days(int piece) => [.. _likelihood.Observed.Pieces[piece].Terms.Select(term => term.Day)];

    /// <summary>Take over numbers; log likelihood there.</summary>
    internal double Set(ReadOnlySpan<double> numbers)
    {
        numbers[..Lot.Numbers.Length].CopyTo(Lot.Numbers);
        for (var piece = 0; piece < Pieces; piece++) Own(numbers, piece).CopyTo(States[piece].Own);
        return _likelihood.Promises(Lot) + Follow();
    }

    /// <summary>Bring the pieces in line with the lot; log likelihood of what was observed of them.</summary>
    internal double Follow()
    {
        double sum = 0;
        for (var piece = 0; piece < Pieces; piece++)
        {
            _likelihood.Follow(Lot, States[piece], piece);
            sum += States[piece].Likelihood;
        }

        return sum;
    }

    /// <summary>The numbers as they stand.</summary>
    internal void Get(Span<double> numbers)
    {
        Lot.Numbers.CopyTo(numbers);
        for (var piece = 0; piece < Pieces; piece++) States[piece].Own.CopyTo(numbers[(Lot.Numbers.Length + piece * _own)..]);
    }

    /// <summary>How a piece's observations pull at some numbers.</summary>
    internal Pull[] Pulls(ReadOnlySpan<double> numbers, int piece, bool believed)
    {
        numbers[..Lot.Numbers.Length].CopyTo(Lot.Numbers);
        Own(numbers, piece).CopyTo(States[piece].Own);
        return _likelihood.Pulls(Lot, States[piece], piece, believed);
    }

    private ReadOnlySpan<double> Own(ReadOnlySpan<double> numbers, int piece) => numbers.Slice(Lot.Numbers.Length + piece * _own, _own);
}
