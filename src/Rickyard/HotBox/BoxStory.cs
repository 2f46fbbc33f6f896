using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Drying;
using Rickyard.Dry;
using Rickyard.Screens;
using static System.FormattableString;

namespace Rickyard.HotBox;

/// <summary>A run of a hot box in plain words: the answer class by class, what holds it back, what it takes, then the numbers and what to take care of.</summary>
internal static class BoxStory
{
    private const double WorthSaying = 0.05;

    public static void Tell(DryingRun run, ChargeRun charge, Screen screen)
    {
        Override(charge.Plan, screen);
        screen.Paragraph(ChargeSentence.Of(run, charge));
        screen.Bullets(ChargeSentence.Each(run, charge));
        Limits(charge, screen);
        Energy(charge, screen);
        Numbers(run, charge, screen);
        RunStory.List("Take care:", BoxCautions.For(charge.Plan), screen);
        RunStory.List("Assumed:", run.Case.Assumptions, screen);
        RunStory.List("Notes:", run.Notes, screen);
        screen.Gap();
        screen.Paragraph(RunStory.Made(run));
    }

    /// <summary>What goes above a safety limit by the user's own words, before all else.</summary>
    public static void Override(BoxPlan plan, Screen screen)
    {
        if (BoxCautions.Override(plan) is not { } words) return;
        screen.Paragraph($"OVERRIDE. {words}");
        screen.Gap();
    }

    /// <summary>What holds it back, stage by stage.</summary>
    public static void Limits(ChargeRun charge, Screen screen)
    {
        RunStory.List("What holds it back, and what would help most:", [.. BoxLimitSentences.Of(charge)], screen);
        RunStory.List("Tried one at a time, to take as much water off each kilogram of wood as by the end of the first drying:", ChangeSentences.Of(charge), screen);
    }

    /// <summary>Energy and money.</summary>
    public static void Energy(ChargeRun charge, Screen screen)
    {
        screen.Gap();
        foreach (var sentence in EnergySentences.Of(charge)) screen.Paragraph(sentence);
    }

    private static void Numbers(DryingRun run, ChargeRun charge, Screen screen)
    {
        screen.Gap();
        screen.Paragraph($"{run.Case.Name}. The middle of each class, on the day it is ready and at the end, as mean/core/shell in % dry basis (mean is the whole piece), and what a piece weighs:");
        screen.Table(ClassTable.Alignment, ClassTable.Heads, ClassTable.Of(run, charge));
        screen.Paragraph($"The box:{Drip(charge)}");
        screen.Table(new string('r', BoxTable.Heads.Count), BoxTable.Heads, BoxTable.Of(run, charge.Series));
    }

    private static string Drip(ChargeRun charge) =>
        charge.DripKilograms >= WorthSaying ? Invariant($" {charge.DripKilograms:0.0} kg of water condensed on walls or wood and dripped off.") : "";
}
