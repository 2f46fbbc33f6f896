using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>How well a state of lot and pieces explains what was observed. Holds buffers: one for each chain.</summary>
internal sealed class LotLikelihood
{
    private readonly LotUnknowns _unknowns;
    private readonly StandIn _standIn;
    private readonly double[] _kernel, _logs, _middle;
    private readonly FoldedPieces _folded;

    /// <summary>For a lot.</summary>
    internal LotLikelihood(LotUnknowns unknowns, StandIn standIn, ObservedLot observed)
    {
        (_unknowns, _standIn, Observed) = (unknowns, standIn, observed);
        _kernel = new double[standIn.Members];
        _logs = new double[observed.Pieces.Count > 0 ? observed.Pieces.Max(piece => piece.Outputs.Length) : 0];
        _middle = new double[unknowns.Count];
        _folded = new(this, observed, unknowns);
    }

    /// <summary>What was observed.</summary>
    internal ObservedLot Observed { get; }

    /// <summary>Bring a piece's numbers, outputs and likelihood in line with the lot and its own numbers.</summary>
    internal void Follow(LotState lot, PieceState state, int piece)
    {
        Place(lot, state, piece);
        Weigh(lot, state, piece);
    }

    /// <summary>Bring a piece's numbers and outputs in line, its likelihood left.</summary>
    internal void Place(LotState lot, PieceState state, int piece)
    {
        Join(lot, state.Own, state.Numbers);
        Predict(state, piece);
    }

    /// <summary>A piece's numbers from the lot's and its own.</summary>
    internal void Join(LotState lot, ReadOnlySpan<double> own, Span<double> numbers)
    {
        var factor = lot.PieceFactor;
        for (var k = 0; k < _unknowns.Count; k++) numbers[k] = _unknowns.LotShare[k] * lot.Unknowns[k];
        for (var i = 0; i < _unknowns.PieceOwn.Count; i++)
        {
            var k = _unknowns.PieceOwn[i];
            numbers[k] += _unknowns.PieceShare[k] * factor * own[i];
        }
    }

    /// <summary>Likelihood of a piece whose outputs are known, in the lot's weather.</summary>
    internal void Weigh(LotState lot, PieceState state, int piece)
    {
        var discrepancy = Discrepancy.Unknown;
        double sum = 0;
        var prediction = Prediction(lot, state, piece);
        foreach (var term in Observed.Pieces[piece].Terms) sum += term.Chance(prediction, ref discrepancy).LogDensity;
        state.Likelihood = sum;
    }

    /// <summary>Every term of a piece, and how far the engine was off for it in the end.</summary>
    internal Discrepancy Tell(LotState lot, PieceState state, int piece, Span<TermChance> chances)
    {
        var discrepancy = Discrepancy.Unknown;
        var terms = Observed.Pieces[piece].Terms;
        var prediction = Prediction(lot, state, piece);
        for (var i = 0; i < terms.Length; i++) chances[i] = terms[i].Chance(prediction, ref discrepancy);
        return discrepancy;
    }

    /// <summary>How every observation of a piece pulls, for a first fit.</summary>
    internal Pull[] Pulls(LotState lot, PieceState state, int piece, bool believed)
    {
        Place(lot, state, piece);
        var prediction = Prediction(lot, state, piece);
        var terms = Observed.Pieces[piece].Terms;
        var pulls = new Pull[terms.Length];
        for (var i = 0; i < pulls.Length; i++) pulls[i] = terms[i].Plain(prediction, believed);
        return pulls;
    }

    /// <summary>Pieces whose own numbers are summed over.</summary>
    internal FoldedPieces Folded => _folded;

    /// <summary>Log likelihood of all that is not of a piece which is walked over: promises and folded pieces.</summary>
    internal double Beside(LotState lot)
    {
        var sum = _folded.Likelihood(lot);
        foreach (var promise in Observed.Promises) sum += promise.LogDensity(Middle(lot, promise.Output));
        return sum;
    }

    /// <summary>Logarithm of an output of the lot's middle piece.</summary>
    internal double Middle(LotState lot, int output)
    {
        for (var k = 0; k < _middle.Length; k++) _middle[k] = _unknowns.LotShare[k] * lot.Unknowns[k];
        _standIn.Feel(_middle, _kernel);
        return _standIn.Log(output, _middle, _kernel) + _standIn.OfWeather(output, lot.Weather);
    }

    private void Predict(PieceState state, int piece)
    {
        _standIn.Feel(state.Numbers, _kernel);
        var outputs = Observed.Pieces[piece].Outputs;
        for (var i = 0; i < outputs.Length; i++) state.Logs[i] = _standIn.Log(outputs[i], state.Numbers, _kernel);
    }

    private PiecePrediction Prediction(LotState lot, PieceState state, int piece)
    {
        var outputs = Observed.Pieces[piece].Outputs;
        for (var i = 0; i < outputs.Length; i++) _logs[i] = state.Logs[i] + _standIn.OfWeather(outputs[i], lot.Weather);
        return new(_logs.AsSpan(0, outputs.Length), state.Size, lot.Meters);
    }
}
