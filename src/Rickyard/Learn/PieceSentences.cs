using Rickyard.Core.Learning;
using Rickyard.Dry;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>Marked splits: what is in them today, and the mass at which to pull each.</summary>
internal static class PieceSentences
{
    private const double Pound = 0.45359237;

    public static IReadOnlyList<string> Of(LearningRun run) => [.. run.Pieces.Select(piece => Sentence(run, piece))];

    private static string Sentence(LearningRun run, PieceForecast piece)
    {
        string At(double[] values) => Say.Percent(Curve.At(run.Days, values, run.Today));
        var now = $"{piece.Piece}: core {At(piece.Median.Core)} ({At(piece.LowTenth.Core)} to {At(piece.HighTenth.Core)}), whole piece {At(piece.Median.Mean)} % dry basis today, {Say.Mass(Curve.At(run.Days, piece.Median.MassKilograms, run.Today))}.";
        return $"{now} {Pull(run, piece)}";
    }

    private static string Pull(LearningRun run, PieceForecast piece)
    {
        var core = Curve.At(run.Days, piece.Median.Core, run.Today);
        if (core < piece.Window.BandLow) return "It is drier than your band already.";
        if (core <= piece.Window.BandHigh) return "It is in your band now: use it.";
        if (piece.ReadyKilograms is not { } mass) return "It does not come into your band within this run.";
        var clock = new RunClock(run.Case, run.Days[^1]);
        var when = piece.Window.From is { Middle: { } day } from ? $", about {clock.Say(day)} (8 chances in 10: {clock.Between(from.Early, from.Late)})" : "";
        return Invariant($"Pull {piece.Piece} at {mass.Middle:0.00} kg ({mass.Middle / Pound:0.0} lb; between {mass.Low:0.00} and {mass.High:0.00} kg){when}.");
    }
}
