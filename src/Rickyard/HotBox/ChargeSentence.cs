using Rickyard.Core.Boxes;
using Rickyard.Core.Drying;
using Rickyard.Dry;

namespace Rickyard.HotBox;

/// <summary>The answer of a box in its first sentence: which classes are ready, and when; then each class by itself.</summary>
internal static class ChargeSentence
{
    public static string Of(DryingRun run, ChargeRun charge)
    {
        if (charge.Classes is [var only]) return ReadySentence.Of(ClassView.Of(run, only));
        var clock = new RunClock(run);
        var ready = charge.Classes.Where(IsReady).ToList();
        var others = charge.Classes.Where(one => !IsReady(one)).Select(one => NotReady(one, clock));
        return $"{Count(ready.Count, charge.Classes.Count)} come into {Say.Band(run.Window)} in the core within these {clock.DayNumber(clock.End)} days: "
            + $"{string.Join("; ", [.. ready.Select(one => Ready(one, clock)), .. others])}.";
    }

    /// <summary>Each class told as a run of its own; nothing where there is but one.</summary>
    public static IEnumerable<string> Each(DryingRun run, ChargeRun charge) =>
        charge.Classes.Count > 1 ? charge.Classes.Select(one => $"{one.Class.Name}: {Lower(ReadySentence.Of(ClassView.Of(run, one)))}") : [];

    private static bool IsReady(ClassRun one) => one.Window.From.Middle is not null && one.Typical.Core[0] >= one.Window.BandLow;

    private static string Count(int ready, int all) => ready == all ? $"All {all} classes" : ready == 0 ? $"None of the {all} classes" : $"{ready} of {all} classes";

    private static string Ready(ClassRun one, RunClock clock) => $"{one.Class.Name} {Since(one.Window, clock)}";

    private static string Since(ReadyWindow window, RunClock clock) => window.From.Middle is > 0 and var from ? $"from {clock.Say(from)}" : "from the start";

    private static string NotReady(ClassRun one, RunClock clock) => one.Typical.Core[0] < one.Window.BandLow
        ? $"{one.Class.Name} starts drier than that"
        : $"{one.Class.Name} not, with the core at {Say.Moisture(one.Median.Core[^1])} on {clock.Say(clock.End)}";

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
