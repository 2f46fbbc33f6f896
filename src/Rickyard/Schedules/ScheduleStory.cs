using Rickyard.Core.Boxes.Safety;
using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using Rickyard.HotBox;
using Rickyard.Screens;
using Rickyard.Web.Pictures.Schedules;
using static System.FormattableString;

namespace Rickyard.Schedules;

/// <summary>A schedule in plain words: the answer first, then the pull list, the choices, what limits it, what it costs, and what to take care of.</summary>
internal static class ScheduleStory
{
    public static void Tell(ScheduleAnswer answer, Screen screen)
    {
        var charge = answer.Run.Charge!;
        BoxStory.Override(charge.Plan, screen);
        if (answer.WasStopped) screen.Paragraph(Invariant($"Stopped before the end of the search; the best of {answer.Tried.Count} schedules so far:"));
        screen.Paragraph(ScheduleWords.Answer(answer));
        RunStory.List("What would make it possible (each by itself):", [.. answer.Cures.Select(CureSentences.Of)], screen);
        Pulls(answer, screen);
        Choices(answer, screen);
        Difference(answer, screen);
        BoxStory.Limits(charge, screen);
        BoxStory.Energy(charge, screen);
        RunStory.List("Take care:", BoxCautions.For(charge.Plan), screen);
        RunStory.List("Assumed:", answer.Case.Assumptions, screen);
        RunStory.List("Notes:", [.. answer.Notes, .. answer.Run.Notes], screen);
        screen.Gap();
        screen.Paragraph(Made(answer));
    }

    private static void Pulls(ScheduleAnswer answer, Screen screen)
    {
        screen.Gap();
        screen.Paragraph("Pull list. Mark a typical split of each class, weigh it daily, and pull the class when it weighs this; the mass tells the mean, while a core alone misleads. Moistures are mean/core/shell in % dry basis, masses those of one split, of one as loaded, and of all the class together:");
        screen.Table(ScheduleTables.PullAlignment, ScheduleTables.PullHeads, ScheduleTables.Pulls(answer));
        screen.Paragraph(WholeCharge(answer));
    }

    private static string WholeCharge(ScheduleAnswer answer)
    {
        if (answer.Best.Classes.Any(pull => pull.PullDay is null)) return "What is not in time stays in to the end.";
        double Sum(Func<ClassPull, double> mass) => answer.Best.Classes.Sum(pull => ScheduleWords.ClassOf(answer, pull).Pieces * mass(pull));
        var rests = answer.Best.Classes.Any(pull => pull.RestDays > 0.02) ? " A class that is pulled rests in a metal bin with a metal lid in the warm box, so that it loses no more." : "";
        return Invariant($"The whole charge weighs {Sum(pull => pull.MassAtLoading):0.0} kg when loaded, and all its classes as pulled {Sum(pull => pull.MassAtPull):0.0} kg together.{rests}");
    }

    private static void Choices(ScheduleAnswer answer, Screen screen)
    {
        screen.Gap();
        screen.Paragraph("What it trades off (days until all is ready; gap of core to shell in points; a setting's % is the humidity at which the vent opens):");
        screen.Table(ScheduleTables.TradeOffAlignment, ScheduleTables.TradeOffHeads, ScheduleTables.TradeOff(answer));
    }

    private static void Difference(ScheduleAnswer answer, Screen screen)
    {
        var sentences = GoalDifference.Of(answer);
        if (sentences.Count > 0) screen.Paragraph(string.Join(' ', sentences));
    }

    private static string Made(ScheduleAnswer answer) => Invariant(
        $"Core is the inner tenth of the piece, shell the outer 6 mm under bare faces. {answer.Tried.Count} schedules tried in {answer.Seconds:0.0} s. Model {answer.Run.ModelVersion}, {answer.Run.Members} members, seed {answer.Run.Seed}.");
}
