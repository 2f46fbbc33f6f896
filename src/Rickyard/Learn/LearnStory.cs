using Rickyard.Core.Learning;
using Rickyard.Dry;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>What was learnt in plain words: the answer first, then what is inside, what was learnt and how sure, the splits one by one, and what to do next.</summary>
internal static class LearnStory
{
    public static void Tell(LearnAnswer answer, Screen screen)
    {
        var run = answer.Run;
        Answer(answer, screen);
        RunStory.List(run.Classes.Count > 0 ? $"That was {run.Classes[0].Name}; the other classes:" : "", ClassSentences.Of(run), screen);
        RunStory.List("Learnt of this lot (8-in-10 ranges):", LearntSentences.Of(run), screen);
        RunStory.List("How sure:", TrustSentences.Of(run), screen);
        RunStory.List("Can hardly be right:", SuspectSentences.Of(run), screen);
        RunStory.List("Left out:", LeftOut(answer), screen);
        RunStory.List("Marked splits:", PieceSentences.Of(run), screen);
        RunStory.List("Worth reading next:", [.. NextSentences.Of(run), .. run.Case.Pieces > 1 ? new[] { NextSentences.Probe(run) } : []], screen);
        Numbers(run, screen);
        RunStory.List("Take care:", [.. NextSentences.Cautions(run), .. Cautions.For(run.Case)], screen);
        RunStory.List("Assumed:", run.Case.Assumptions, screen);
        RunStory.List("Notes:", run.Notes, screen);
        screen.Gap();
        screen.Paragraph(Made(run));
    }

    /// <summary>Rows that were not learnt from, one a sentence.</summary>
    public static IReadOnlyList<string> LeftOut(LearnAnswer answer) => [.. answer.LeftOut.Select(row => $"{row.Place}, line {row.Line}: {row.Why} {row.WhatToDo}")];

    private static void Answer(LearnAnswer answer, Screen screen)
    {
        var run = answer.Run;
        var sentences = new AnswerSentences(run);
        screen.Paragraph(sentences.Answer);
        screen.Paragraph(sentences.Change);
        screen.Gap();
        screen.Paragraph(TodaySentences.Inside(run));
        if (TodaySentences.Share(run) is { } share) screen.Paragraph(share);
        if (OverDrySentence.Of(run) is { } dry) screen.Paragraph(dry);
        if (!IsTooDry(run)) screen.Paragraph(WaitingSentence.Of(run.Case, run.Days, run.AirEquilibrium, run.Window));
        if (Meter(answer.Band) is { } meter) screen.Paragraph(meter);
    }

    /// <summary>Whether the middle is below the band, so that what waiting brings is what damp air gives back.</summary>
    private static bool IsTooDry(LearningRun run) => run.OverDry is not null && Curve.At(run.Days, run.Median.Core, run.Today) < run.Window.BandLow;

    private static string? Meter(CookBand band) => band.Scale is null ? null : Invariant(
        $"Your band, {100 * band.ShownLow:0.#}–{100 * band.ShownHigh:0.#} as a meter on the {band.Scale} scale shows it, is {100 * band.Low:0.0}–{100 * band.High:0.0} % dry basis in this wood.");

    private static void Numbers(LearningRun run, Screen screen)
    {
        var heads = LearnTable.Heads(run);
        screen.Gap();
        screen.Paragraph($"{run.Case.Name}: {run.Case.Species.CommonName}, {run.Case.Split.Describe()}. From today on, the middle of {(run.Case.Pieces > 1 ? "all splits" : "what is likely")}, % dry basis:");
        screen.Table(new string('r', heads.Count), heads, LearnTable.Of(run));
        screen.Paragraph(run.Case.Pieces > 1
            ? $"Core, 8 in 10: of all splits, a tenth are below the first number and a tenth above the second. In band: the share with a core in {Say.Band(run.Window)}."
            : "Core, 8 in 10: the core lies between the two with 8 chances in 10.");
    }

    private static string Made(LearningRun run) =>
        Invariant($"Core is the inner tenth of the piece, shell the outer 6 mm under bare faces, end the outer 6 mm of end grain. Model {run.ModelVersion}, {run.Request.Members} members, {run.Request.Draws} draws, seed {run.Request.Seed}, {run.Seconds:0.0} s.");
}
