using Rickyard.Core.Planning;
using Rickyard.Dry;
using Rickyard.Screens;
using Rickyard.Web.Pictures.Sizes;
using static System.FormattableString;

namespace Rickyard.SplitSize;

/// <summary>An answer about sizes in plain words: the width first, then the sizes tried, what was assumed, and where it ends.</summary>
internal static class SizeStory
{
    public static void Tell(SizeAnswer answer, Screen screen)
    {
        var sentences = new SizeSentences(answer);
        screen.Paragraph(sentences.Answer);
        screen.Gap();
        if (sentences.Own is { } own) screen.Paragraph(own);
        screen.Paragraph(sentences.OnTheDay);
        screen.Gap();
        Sizes(answer, sentences, screen);
        List("Take care:", Cautions.For(answer.Case), screen);
        List("Assumed:", [.. answer.Case.Assumptions, .. Assumed(answer)], screen);
        List("Limits:", Limits(answer), screen);
        List("Notes:", answer.Run.Notes, screen);
        screen.Gap();
        screen.Paragraph(Invariant($"Model {answer.Run.ModelVersion}, {answer.Request.Members} members, seed {answer.Request.Seed}, {answer.Trials.Count} sizes run, {answer.Seconds:0.0} s."));
    }

    private static void Sizes(SizeAnswer answer, SizeSentences sentences, Screen screen)
    {
        screen.Paragraph($"{answer.Case.Name}: {answer.Case.Species.CommonName}. Sizes that were run:");
        var odds = WidthWords.Odds(answer.Request.Confidence);
        screen.Table("rrrrl", ["cm", "in", $"chance {sentences.By}", $"{odds} ready by", ""], answer.Trials.Select(trial => (IReadOnlyList<string>)
        [
            Invariant($"{100 * trial.Width:0.0}"),
            WidthWords.Inches(trial.Width).Replace("\u00a0in", "", StringComparison.Ordinal),
            Say.Share(trial.ChanceBy(answer.Request.NeededDays)),
            sentences.ReadyBy(trial),
            trial.Width == answer.Largest ? "widest" : "",
        ]));
    }

    private static IEnumerable<string> Assumed(SizeAnswer answer)
    {
        yield return $"Every size has the shape and length of the case's piece, {answer.Case.Split.Describe()}; only its width is changed. Width is the widest way across the end grain.";
        if (answer.Case.SizeSpread > 0) yield return "All pieces have exactly that width: it is the widest that none should pass, so the spread of sizes in the lot is left out.";
        if (answer.Case.Charge.Count > 0) yield return "The first class of the charge is split to that width, as much wood of it as before; the other classes stay as they are.";
    }

    private static string[] Limits(SizeAnswer answer) =>
    [
        Invariant($"Widths from {100 * SizeSteps.Smallest:0} to {100 * SizeSteps.Largest:0} cm in steps of half a centimetre; narrower and wider ones were not tried."),
        "Ready by a day means that the core, the inner tenth of the piece, has come there by then; wet weather can lift it a little again.",
        Invariant($"A forecast, not a promise. {answer.Request.Members} members tell chances in steps of {100.0 / answer.Request.Members:0.#} %."),
    ];

    private static void List(string head, IReadOnlyList<string> sentences, Screen screen)
    {
        if (sentences.Count == 0) return;
        screen.Gap();
        screen.Paragraph(head);
        screen.Bullets(sentences);
    }
}
