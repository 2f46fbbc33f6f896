using Rickyard.Core.Cases;
using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.Outlook;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning.Unknowns;

/// <summary>What draws say of each unknown, beside what the case alone said.</summary>
internal static class Learnt
{
    /// <summary>Tenths of a standard normal number.</summary>
    private const double Tenth = 1.2815515594;

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<LearntUnknown> Of(
        DryingCase drying, LotUnknowns unknowns, ObservedLot observed, IReadOnlyList<Observation> observations, IReadOnlyList<LotDraw> draws) =>
    [
        .. unknowns.Active.Select((unknown, k) => One(UnknownWords.Of(unknown, drying), unknowns.LotShare[k], [.. draws.Select(draw => draw.Unknowns[k])])),
        .. unknowns.PieceOwn.Count == 0 ? [] : new[] { Pieces(draws) },
        .. observed.Meters.Select((scale, i) => Meter(scale, i, observations, draws)),
    ];

    private static LearntUnknown One(UnknownWords words, double share, double[] numbers) =>
        new(words.Name, words.Unit, new(words.Value(-Tenth * share), words.Value(0), words.Value(Tenth * share)),
            Quantiles.Of([.. numbers.Select(number => words.Value(share * number))]));

    private static LearntUnknown Pieces(IReadOnlyList<LotDraw> draws) => new(
        "how far the splits differ", "× the usual",
        new(Math.Exp(-Tenth * LotState.PieceSpreadLog), 1, Math.Exp(Tenth * LotState.PieceSpreadLog)), Quantiles.Of([.. draws.Select(draw => draw.PieceFactor)]));

    private static LearntUnknown Meter(string scale, int meter, IReadOnlyList<Observation> observations, IReadOnlyList<LotDraw> draws)
    {
        var points = 100 * observations.OfType<PinObservation>().Where(pin => pin.Reading.Scale.Name == scale).Average(pin => pin.Corrected.SharedSpread);
        return new($"error of the meter on this wood ({scale} scale)", "points", new(-Tenth * points, 0, Tenth * points), Quantiles.Of([.. draws.Select(draw => points * draw.Meters[meter])]));
    }
}
