using Rickyard.Core.Drying;
using Rickyard.HotBox;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Dry;

/// <summary>A run in plain words: the answer first, then what stands behind it, then the numbers, what was assumed, and how it was made.</summary>
internal static class RunStory
{
    public static void Tell(DryingRun run, Screen screen)
    {
        if (run.Charge is { } charge) BoxStory.Tell(run, charge, screen);
        else TellSplit(run, screen);
    }

    /// <summary>Sentences under a head; nothing where there are none.</summary>
    public static void List(string head, IReadOnlyList<string> sentences, Screen screen)
    {
        if (sentences.Count == 0) return;
        screen.Gap();
        screen.Paragraph(head);
        screen.Bullets(sentences);
    }

    /// <summary>What the words mean, and how the run was made.</summary>
    public static string Made(DryingRun run) =>
        Invariant($"Core is the inner tenth of the piece, shell the outer 6 mm under bare faces, end the outer 6 mm of end grain. Model {run.ModelVersion}, {run.Members} members, seed {run.Seed}, {run.Seconds:0.0} s.");

    private static void TellSplit(DryingRun run, Screen screen)
    {
        screen.Paragraph(ReadySentence.Of(run));
        screen.Gap();
        screen.Paragraph(StateSentence.Of(run));
        screen.Paragraph(LimitSentences.Limits(run));
        screen.Paragraph(LimitSentences.Faster(run));
        screen.Paragraph(WaitingSentence.Of(run));
        Numbers(run, screen);
        List("Take care:", Cautions.For(run.Case), screen);
        List("Assumed:", run.Case.Assumptions, screen);
        List("Notes:", run.Notes, screen);
        screen.Gap();
        screen.Paragraph(Made(run));
    }

    private static void Numbers(DryingRun run, Screen screen)
    {
        var heads = RunTable.Heads(run);
        screen.Gap();
        screen.Paragraph($"{run.Case.Name}: {run.Case.Species.CommonName}, {run.Case.Split.Describe()}. Moisture of the typical split, % dry basis:");
        screen.Table(new string('r', heads.Count), heads, RunTable.Of(run));
        screen.Paragraph($"Core, {Say.Percent(run.Typical.Core[0])} to {Say.Percent(run.Typical.Core[^1])} % dry basis: {RunTable.Spark(run)}");
    }
}
