using Rickyard.Core.Learning.Inference;
using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Measuring;
using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Readings that could be taken today, and what each would show under every draw of the lot.</summary>
internal sealed class ReadingChoices
{
    /// <summary>A pocket meter on wood at room temperature: within a point or so of the oven (Wengert, text). [kg kg⁻¹]</summary>
    private const double PinError = 0.012;

    /// <summary>A household oven and kitchen scale: integer percent (ASTM D4442, method B). [kg kg⁻¹]</summary>
    private const double OvenError = 0.01;

    private const double ScaleError = 0.005;

    /// <summary>Above this a meter only says wet. [kg kg⁻¹]</summary>
    private const double MeterCeiling = 0.28;

    private static readonly Pins Core = new(PinPlace.FreshCore);
    private static readonly Pins Face = new(PinPlace.SplitFace);

    private readonly int _core, _face, _section, _mean, _dry;

    /// <summary>Ask the engine for what they need.</summary>
    internal ReadingChoices(OutputTable table, double today)
    {
        (_core, _face) = (table.Ask(today, Sensor.OfPins(Core)), table.Ask(today, Sensor.OfPins(Face)));
        (_section, _mean, _dry) = (table.Ask(today, Sensor.Section), table.Ask(today, Sensor.Mean), table.Ask(today, Sensor.DryMass));
    }

    /// <summary>All that make sense for a lot.</summary>
    /// <param name="standIn">The engine's stand-in.</param>
    /// <param name="series">Outputs of the curves.</param>
    /// <param name="draws">Draws of the lot.</param>
    /// <param name="drawer">Draws pieces.</param>
    /// <param name="observed">What was observed.</param>
    /// <param name="isLot">Whether there are several pieces.</param>
    internal IEnumerable<ReadingChoice> All(
        StandIn standIn, SeriesOutputs series, IReadOnlyList<LotDraw> draws, PieceDrawer drawer, ObservedLot observed, bool isLot)
    {
        var reader = new TrackReader(standIn, series, []);
        double Pin(DrawnPiece piece, int output) => Math.Min(MeterCeiling, reader.At(piece, output) + PinError * drawer.Normally());
        double Oven(DrawnPiece piece) => reader.At(piece, _section) + OvenError * drawer.Normally();
        double Mass(DrawnPiece piece) =>
            Math.Log(reader.At(piece with { Factor = 1 }, _dry) * piece.MassFactor * (1 + reader.At(piece, _mean))) + ScaleError * drawer.Normally();
        double[] Of(Func<LotDraw, double> value) => [.. draws.Select(value)];
        double[] MeanOf(int pieces, Func<DrawnPiece, double> value) => Of(draw => Enumerable.Range(0, pieces).Average(_ => value(drawer.Any(draw))));

        foreach (var count in isLot ? new[] { 1, 3, 5 } : [1])
            yield return new(CoreWords(count, isLot), Core, "", true, MeanOf(count, piece => Pin(piece, _core)));
        yield return new(isLot ? "probe the split faces of 3 splits at mid-length" : "probe the split face at mid-length", Face, "", false, MeanOf(isLot ? 3 : 1, piece => Pin(piece, _face)));
        yield return new(isLot ? "dry a section from the middle of one split in an oven" : "dry a section from its middle in an oven", null, "", true, MeanOf(1, Oven));
        for (var i = 0; isLot && i < observed.Pieces.Count; i++)
        {
            var (name, number) = (observed.Pieces[i].Name, i);
            if (name.Length == 0) continue;
            if (observed.Pieces[i].Terms.Any(term => term is MassTerm)) yield return new($"weigh {name} again", null, name, false, Of(draw => Mass(drawer.Observed(draw, number))));
            yield return new($"split {name} open and probe its core", Core, name, true, Of(draw => Pin(drawer.Observed(draw, number), _core)));
        }
    }

    private static string CoreWords(int count, bool isLot) => (isLot, count) switch
    {
        (false, _) => "split it open and probe its core",
        (_, 1) => "split one open and probe its core",
        _ => FormattableString.Invariant($"split {count} open and probe their cores"),
    };
}
