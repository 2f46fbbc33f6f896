using Rickyard.Core.Drying;
using static System.FormattableString;

namespace Rickyard.Dry;

/// <summary>What holds the drying back, stage by stage, and what would therefore speed it.</summary>
internal static class LimitSentences
{
    private const double MostlySurface = 0.6;
    private const double MostlyInside = 0.4;
    private const int Stages = 3;

    public static string Limits(DryingRun run)
    {
        var clock = new RunClock(run);
        var stages = Merged(StagesOf(run));
        var words = stages.Select((stage, index) => $"{When(stage, index, stages.Count, clock)} {What(stage.Share)}");
        return $"What holds the drying back: {string.Join("; then ", words)}.";
    }

    public static string Faster(DryingRun run)
    {
        var share = Mean(run, 0, ReadyOrEnd(run));
        return share switch
        {
            > MostlySurface => "What would speed it: more and drier air at the wood, so one row instead of several, wind, sun and a roof outdoors, more fan or vent in a box. Splitting finer helps about as much as it adds bare face.",
            < MostlyInside => $"What would speed it: thinner pieces and warmth. {Thinner(run)} More wind would do little.",
            _ => $"What would speed it: both thinner pieces and better air. {Thinner(run)} Wind, sun and a roof, or more fan in a box, help the other half.",
        };
    }

    private static string Thinner(DryingRun run) =>
        Invariant($"The time spent on the way out of the wood goes about with the square of the thickness, now {1000 * run.Case.Split.Thickness:0} mm: halve it and that part falls to near a quarter.");

    private static string When((double From, double To, double Share) stage, int index, int count, RunClock clock) =>
        count == 1 ? "all along" : index == 0 ? $"up to {clock.Say(stage.To)}" : index == count - 1 ? "in the end" : $"up to {clock.Say(stage.To)}";

    private static string What(double share) => share switch
    {
        > MostlySurface => $"the air at its surface ({Say.Share(share)} of the resistance)",
        < MostlyInside => $"the way out through the wood ({Say.Share(1 - share)} of the resistance)",
        _ => $"the air at its surface ({Say.Share(share)} of the resistance) and the way out through the wood ({Say.Share(1 - share)}) about alike",
    };

    private static double ReadyOrEnd(DryingRun run) => run.Window.From.Middle is { } from && from > run.Days[0] ? from : run.Days[^1];

    private static List<(double From, double To, double Share)> StagesOf(DryingRun run)
    {
        var end = ReadyOrEnd(run);
        return [.. Enumerable.Range(0, Stages).Select(stage => (From: end * stage / Stages, To: end * (stage + 1) / Stages))
            .Select(span => (span.From, span.To, Mean(run, span.From, span.To)))];
    }

    private static List<(double From, double To, double Share)> Merged(List<(double From, double To, double Share)> stages)
    {
        List<(double From, double To, double Share)> merged = [stages[0]];
        foreach (var stage in stages.Skip(1))
        {
            var last = merged[^1];
            if (Kind(last.Share) != Kind(stage.Share)) merged.Add(stage);
            else merged[^1] = (last.From, stage.To, (last.Share * (last.To - last.From) + stage.Share * (stage.To - stage.From)) / (stage.To - last.From));
        }

        return merged;
    }

    private static int Kind(double share) => share > MostlySurface ? 2 : share < MostlyInside ? 0 : 1;

    // The first report has no drying behind it; a span without reports is read between them.
    private static double Mean(DryingRun run, double from, double to)
    {
        var inside = Enumerable.Range(1, run.Days.Length - 1).Where(report => run.Days[report] > from && run.Days[report] <= to && double.IsFinite(run.SurfaceShare[report]))
            .Select(report => run.SurfaceShare[report]).ToList();
        return inside.Count > 0 ? inside.Average() : Curve.At(run.Days, run.SurfaceShare, (from + to) / 2);
    }
}
