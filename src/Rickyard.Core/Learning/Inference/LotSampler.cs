using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>
/// One Markov chain over lot, pieces, meters and weather. Each round: the lot with its pieces' own numbers held; each piece; the lot once more with the pieces' whole numbers held
/// (interweaving, Yu and Meng 2011, J. Comput. Graph. Stat. 20: 531, from memory), so that it moves as well with fifty readings as with one; the weather.
/// </summary>
internal sealed class LotSampler
{
    private const int Starts = 200;
    private const int WeatherTries = 3;

    private readonly LotUnknowns _unknowns;
    private readonly LotLikelihood _likelihood;
    private readonly Xoshiro256StarStar _random;
    private readonly int _weathers;
    private readonly LotState _lot;
    private readonly PieceState[] _pieces, _tried;

    /// <summary>A chain.</summary>
    internal LotSampler(LotUnknowns unknowns, StandIn standIn, ObservedLot observed, int seed)
    {
        (_unknowns, _weathers, _random) = (unknowns, standIn.Weathers, new(seed));
        _likelihood = new(unknowns, standIn, observed);
        _lot = new(unknowns.Count, observed.Meters.Count);
        _pieces = [.. observed.Pieces.Select(Fresh)];
        _tried = [.. observed.Pieces.Select(Fresh)];
    }

    /// <summary>Walk.</summary>
    /// <param name="warmUp">Rounds thrown away.</param>
    /// <param name="draws">Draws kept.</param>
    /// <param name="apart">Rounds from one draw to the next.</param>
    /// <param name="cancellation">Stops it.</param>
    internal List<LotDraw> Run(int warmUp, int draws, int apart, CancellationToken cancellation)
    {
        StartWell();
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

    private PieceState Fresh(ObservedPiece piece) => new(_unknowns.PieceOwn.Count, _unknowns.Count, piece.Outputs.Length);

    /// <summary>The best of some draws from the prior.</summary>
    private void StartWell()
    {
        var best = double.NegativeInfinity;
        var (lot, weather) = (new double[_lot.Numbers.Length], 0);
        var pieces = _pieces.Select(piece => new double[piece.Own.Length]).ToArray();
        for (var start = 0; start < Starts; start++)
        {
            Scatter(_lot.Numbers);
            _lot.Weather = _random.Next(_weathers);
            foreach (var piece in _pieces) Scatter(piece.Own);
            if (FollowAll(_pieces) is var there && there <= best) continue;
            best = there;
            _lot.Numbers.CopyTo(lot, 0);
            weather = _lot.Weather;
            for (var i = 0; i < pieces.Length; i++) _pieces[i].Own.CopyTo(pieces[i], 0);
        }

        lot.CopyTo(_lot.Numbers, 0);
        _lot.Weather = weather;
        for (var i = 0; i < pieces.Length; i++) pieces[i].CopyTo(_pieces[i].Own, 0);
        FollowAll(_pieces);
    }

    private void Scatter(double[] numbers)
    {
        for (var k = 0; k < numbers.Length; k++) numbers[k] = Normal.Sample(_random, 0, 1);
    }

    private void Round()
    {
        MoveLot();
        for (var piece = 0; piece < _pieces.Length; piece++) MovePiece(piece);
        MoveLotUnderPieces();
        for (var tries = 0; _weathers > 1 && tries < WeatherTries; tries++) MoveWeather();
    }

    /// <summary>The pieces' own numbers held.</summary>
    private void MoveLot()
    {
        var now = _pieces.Sum(piece => piece.Likelihood) + _likelihood.Promises(_lot);
        for (var i = 0; i < _pieces.Length; i++) _tried[i].Copy(_pieces[i]);
        EllipticalSlice.Step(_lot.Numbers, now, () => FollowAll(_tried), _random);
        for (var i = 0; i < _pieces.Length; i++) _pieces[i].Copy(_tried[i]);
    }

    private double FollowAll(PieceState[] pieces)
    {
        var sum = _likelihood.Promises(_lot);
        for (var i = 0; i < pieces.Length; i++)
        {
            _likelihood.Follow(_lot, pieces[i], i);
            sum += pieces[i].Likelihood;
        }

        return sum;
    }

    private void MovePiece(int piece)
    {
        var state = _pieces[piece];
        EllipticalSlice.Step(state.Own, state.Likelihood, () =>
        {
            _likelihood.Follow(_lot, state, piece);
            return state.Likelihood;
        }, _random);
    }

    /// <summary>The pieces' whole numbers held: then what the lot shares is a normal mean of them; only the promises look at it beside.</summary>
    private void MoveLotUnderPieces()
    {
        if (_pieces.Length == 0) return;
        var (before, promised) = (_lot.Unknowns.ToArray(), _likelihood.Promises(_lot));
        for (var i = 0; i < _unknowns.PieceOwn.Count; i++) MoveUnder(_unknowns.PieceOwn[i]);
        if (Math.Log(1 - _random.NextDouble()) > _likelihood.Promises(_lot) - promised) before.CopyTo(_lot.Unknowns);
        foreach (var piece in _pieces) Part(piece);
    }

    private void MoveUnder(int k)
    {
        var own = _unknowns.PieceShare[k] * _lot.PieceFactor;
        var weight = _unknowns.LotShare[k] / (own * own);
        var precision = 1 + _pieces.Length * weight * _unknowns.LotShare[k];
        var mean = weight * _pieces.Sum(piece => piece.Numbers[k]) / precision;
        _lot.Unknowns[k] = Normal.Sample(_random, mean, 1 / Math.Sqrt(precision));
    }

    /// <summary>A piece's own numbers from its whole ones.</summary>
    private void Part(PieceState piece)
    {
        var factor = _lot.PieceFactor;
        for (var i = 0; i < _unknowns.PieceOwn.Count; i++)
        {
            var k = _unknowns.PieceOwn[i];
            piece.Own[i] = (piece.Numbers[k] - _unknowns.LotShare[k] * _lot.Unknowns[k]) / (_unknowns.PieceShare[k] * factor);
        }
    }

    private void MoveWeather()
    {
        var (before, now) = (_lot.Weather, _pieces.Sum(piece => piece.Likelihood) + _likelihood.Promises(_lot));
        _lot.Weather = _random.Next(_weathers);
        var there = WeighAll();
        if (Math.Log(1 - _random.NextDouble()) <= there - now) return;
        _lot.Weather = before;
        WeighAll();
    }

    private double WeighAll()
    {
        var sum = _likelihood.Promises(_lot);
        for (var i = 0; i < _pieces.Length; i++)
        {
            _likelihood.Weigh(_lot, _pieces[i], i);
            sum += _pieces[i].Likelihood;
        }

        return sum;
    }

    private LotDraw Draw()
    {
        var observed = _likelihood.Observed;
        var chances = new TermChance[observed.Pieces.Sum(piece => piece.Terms.Length) + observed.Promises.Count];
        var pieces = new PieceDraw[_pieces.Length];
        for (var i = 0; i < pieces.Length; i++)
        {
            var terms = observed.Pieces[i].Terms;
            var told = new TermChance[terms.Length];
            var discrepancy = _likelihood.Tell(_lot, _pieces[i], i, told);
            for (var j = 0; j < terms.Length; j++) chances[terms[j].Observation] = told[j];
            pieces[i] = new([.. _pieces[i].Numbers], _pieces[i].Size, discrepancy);
        }

        foreach (var promise in observed.Promises) chances[promise.Observation] = Tell(promise);
        return new(_lot.Unknowns.ToArray(), _lot.PieceFactor, _lot.Meters.ToArray(), _lot.Weather, pieces, chances);
    }

    private TermChance Tell(Promise promise)
    {
        var moisture = _likelihood.Middle(_lot, promise.Output);
        var (mean, deviation) = Promise.Expected(moisture);
        return new(promise.LogDensity(moisture), promise.Wrong(moisture), mean, deviation);
    }
}
