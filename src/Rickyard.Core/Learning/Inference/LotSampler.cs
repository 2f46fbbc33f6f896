using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// One Markov chain over lot, pieces, meters and weather. Each round: all numbers at once along the first fit; each piece's own; the lot once more with the pieces' whole numbers
/// held (interweaving, Yu and Meng 2011, J. Comput. Graph. Stat. 20: 531, from memory).
/// </summary>
internal sealed class LotSampler
{
    private const int UnfoldingSteps = 2;

    private readonly LotUnknowns _unknowns;
    private readonly JointState _state;
    private readonly FirstFit _fit;
    private readonly Xoshiro256StarStar _random;
    private readonly double[] _numbers, _from, _across;
    private int _round;

    /// <summary>A chain.</summary>
    internal LotSampler(LotUnknowns unknowns, StandIn standIn, ObservedLot observed, FirstFit fit, int seed)
    {
        (_unknowns, _fit, _random) = (unknowns, fit, new(seed));
        _state = new(unknowns, standIn, observed);
        _state.Likelihood.Folded.Directions = fit.Directions;
        (_numbers, _from, _across) = (new double[_state.Count], new double[_state.Count], new double[_state.Count]);
    }

    /// <summary>Walk.</summary>
    /// <param name="warmUp">Rounds thrown away.</param>
    /// <param name="draws">Draws kept.</param>
    /// <param name="apart">Rounds from one draw to the next.</param>
    /// <param name="cancellation">Stops it.</param>
    internal List<LotDraw> Run(int warmUp, int draws, int apart, CancellationToken cancellation)
    {
        Start();
        for (var round = 0; round < warmUp; round++) Round();
        List<LotDraw> kept = new(draws);
        while (kept.Count < draws)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var round = 0; round < apart; round++) Round();
            kept.Add(Draw());
        }

        return kept;
    }

    /// <summary>A draw from the first fit, twice as far out as usual, so that chains which agree do so from afar.</summary>
    private void Start()
    {
        var apart = _fit.Spread(Standard());
        for (var i = 0; i < _numbers.Length; i++) _numbers[i] = _fit.Middle[i] + 2 * apart[i];
        _state.Set(_numbers);
    }

    private double[] Standard()
    {
        var numbers = new double[_state.Count];
        for (var i = 0; i < numbers.Length; i++) numbers[i] = Normal.Sample(_random, 0, 1);
        return numbers;
    }

    private void Round()
    {
        MoveAll();
        foreach (var piece in _state.Walked) MovePiece(piece);
        MoveLotUnderPieces();
        if (_round++ % 2 == 0) MoveSpread();
        else MoveSpreadUnderPieces();
    }

    /// <summary>Along an ellipse of the first fit, with what the fit leaves of the posterior as likelihood.</summary>
    private void MoveAll()
    {
        _state.Get(_numbers);
        for (var i = 0; i < _from.Length; i++) _from[i] = _numbers[i] - _fit.Middle[i];
        _fit.Spread(Standard()).CopyTo(_across, 0);
        _across[_state.Lot.PieceSpreadPlace] = 0;
        EllipticalSlice.Walk(_state.Known() + PriorOverFit(_from), AtAngle, _random);
    }

    private double AtAngle(double cosine, double sine)
    {
        Span<double> apart = stackalloc double[_from.Length];
        for (var i = 0; i < apart.Length; i++)
        {
            apart[i] = i == _state.Lot.PieceSpreadPlace ? _from[i] : _from[i] * cosine + _across[i] * sine;
            _numbers[i] = _fit.Middle[i] + apart[i];
        }

        return _state.Set(_numbers) + PriorOverFit(apart);
    }

    private double PriorOverFit(ReadOnlySpan<double> apart)
    {
        double squares = 0;
        for (var i = 0; i < apart.Length; i++) squares += (_fit.Middle[i] + apart[i]) * (_fit.Middle[i] + apart[i]);
        return -0.5 * (squares + _fit.MinusSquares(apart));
    }

    private void MovePiece(int piece)
    {
        var state = _state.States[piece];
        double[] from = [.. state.Own], across = [.. from.Select(_ => Normal.Sample(_random, 0, 1))];
        EllipticalSlice.Walk(state.Likelihood, (cosine, sine) =>
        {
            for (var i = 0; i < from.Length; i++) state.Own[i] = from[i] * cosine + across[i] * sine;
            _state.Likelihood.Follow(_state.Lot, state, piece);
            return state.Likelihood;
        }, _random);
    }

    /// <summary>The walked pieces' whole numbers held: then what the lot shares is a normal mean of them; only the other evidence looks at it beside.</summary>
    private void MoveLotUnderPieces()
    {
        if (_state.Walked.Count == 0 || _unknowns.PieceOwn.Count == 0) return;
        var before = _state.Lot.Unknowns.ToArray();
        foreach (var k in _unknowns.PieceOwn) MoveUnder(k);
        var beside = _state.Likelihood.Beside(_state.Lot);
        if (Math.Log(1 - _random.NextDouble()) > beside - _state.Beside) before.CopyTo(_state.Lot.Unknowns);
        else _state.Beside = beside;
        foreach (var piece in _state.Walked) Part(_state.States[piece]);
    }

    private void MoveUnder(int k)
    {
        var own = _unknowns.PieceShare[k] * _state.Lot.PieceFactor;
        var weight = _unknowns.LotShare[k] / (own * own);
        var precision = 1 + _state.Walked.Count * weight * _unknowns.LotShare[k];
        var mean = weight * _state.Walked.Sum(piece => _state.States[piece].Numbers[k]) / precision;
        _state.Lot.Unknowns[k] = Normal.Sample(_random, mean, 1 / Math.Sqrt(precision));
    }

    /// <summary>The spread between pieces, their own numbers held.</summary>
    private void MoveSpread() => MoveSpread(_state.Known(), _state.Follow);

    /// <summary>The spread between pieces, their whole numbers held: it then has to fit how far they lie apart, and the folded pieces.</summary>
    private void MoveSpreadUnderPieces()
    {
        if (_state.Walked.Count == 0 || _unknowns.PieceOwn.Count == 0) return;
        var squares = _state.Walked.Sum(piece => _state.States[piece].Own[..^1].Sum(one => one * one)) * _state.Lot.PieceFactor * _state.Lot.PieceFactor;
        double Chance()
        {
            var factor = _state.Lot.PieceFactor;
            return -0.5 * squares / (factor * factor) - _state.Walked.Count * _unknowns.PieceOwn.Count * Math.Log(factor) + _state.Beside;
        }

        MoveSpread(Chance(), () =>
        {
            _state.Beside = _state.Likelihood.Beside(_state.Lot);
            return Chance();
        });
        foreach (var piece in _state.Walked) Part(_state.States[piece]);
    }

    private void MoveSpread(double now, Func<double> chance)
    {
        var place = _state.Lot.PieceSpreadPlace;
        var (from, across) = (_state.Lot.Numbers[place], Normal.Sample(_random, 0, 1));
        EllipticalSlice.Walk(now, (cosine, sine) =>
        {
            _state.Lot.Numbers[place] = from * cosine + across * sine;
            return chance();
        }, _random);
    }

    /// <summary>A piece's own numbers from its whole ones.</summary>
    private void Part(PieceState piece)
    {
        var factor = _state.Lot.PieceFactor;
        for (var i = 0; i < _unknowns.PieceOwn.Count; i++)
        {
            var k = _unknowns.PieceOwn[i];
            piece.Own[i] = (piece.Numbers[k] - _unknowns.LotShare[k] * _state.Lot.Unknowns[k]) / (_unknowns.PieceShare[k] * factor);
        }
    }

    private LotDraw Draw()
    {
        var (observed, lot) = (_state.Likelihood.Observed, _state.Lot);
        foreach (var piece in _state.Likelihood.Folded.Pieces) Unfold(piece);
        var chances = new TermChance[observed.Pieces.Sum(piece => piece.Terms.Length) + observed.Promises.Count];
        var pieces = new PieceDraw[_state.States.Length];
        for (var i = 0; i < pieces.Length; i++)
        {
            var terms = observed.Pieces[i].Terms;
            var told = new TermChance[terms.Length];
            var discrepancy = _state.Likelihood.Tell(lot, _state.States[i], i, told);
            for (var j = 0; j < terms.Length; j++) chances[terms[j].Observation] = told[j];
            pieces[i] = new([.. _state.States[i].Numbers], _state.States[i].Size, discrepancy);
        }

        foreach (var promise in observed.Promises) chances[promise.Observation] = Tell(promise);
        return new(lot.Unknowns.ToArray(), lot.PieceFactor, lot.Meters.ToArray(), lot.Weather.ToArray(), pieces, chances);
    }

    /// <summary>A folded piece's own numbers, given the lot: a few steps on from those of the draw before.</summary>
    private void Unfold(int piece)
    {
        _state.Likelihood.Follow(_state.Lot, _state.States[piece], piece);
        for (var step = 0; step < UnfoldingSteps; step++) MovePiece(piece);
    }

    private TermChance Tell(Promise promise)
    {
        var moisture = _state.Likelihood.Middle(_state.Lot, promise.Output);
        var (mean, deviation) = Promise.Expected(moisture);
        return new(promise.LogDensity(moisture), promise.Wrong(moisture), mean, deviation);
    }
}
