using System.Globalization;
using NodaTime;
using Rickyard.Core.Drying;

namespace Rickyard.Web.Pictures;

/// <summary>What the picture says in words. Moisture is in % dry basis throughout; spans of dates hold the middle eight in ten of the lot.</summary>
public static class RunWords
{
    /// <summary>The answer: ready when and until when, or why not.</summary>
    public static string Answer(DryingRun run) => ReadyDay(run) is { } from
        ? $"{Opening(run, from)}{SpreadOf(run, run.Window.From)}{Closing(run, from)}."
        : NotReady(run);

    /// <summary>The moisture on the day of the answer, in the middle of the lot.</summary>
    public static string Detail(DryingRun run)
    {
        var day = ReadyDay(run) ?? run.Days[^1];
        string Value(double[] series) => Percent(At(run, series, day));
        var when = day < 0.5 ? "At the start" : $"On {When(run, day)}";
        return $"{when} the middle of the lot has core {Value(run.Median.Core)}, shell {Value(run.Median.Shell)}, end {Value(run.Median.End)}\u00a0%\u00a0dry\u00a0basis; your band for the core is {Band(run)}.";
    }

    /// <summary>Wood, piece and start.</summary>
    public static string Subtitle(DryingRun run)
    {
        var start = run.Typical;
        var same = Math.Abs(start.Core[0] - start.Shell[0]) < 0.005;
        var moisture = same ? $"{Percent(start.Mean[0])}\u00a0%\u00a0dry\u00a0basis" : $"core {Percent(start.Core[0])}, shell {Percent(start.Shell[0])}\u00a0%\u00a0dry\u00a0basis";
        return $"{Drawn(run)}{Capital(run.Case.Species.CommonName)}: {run.Case.Split.Describe().Replace(" mm", "\u00a0mm", StringComparison.Ordinal)}. Started {(run.Case.Start.IsDated ? $"{CalendarWords.Date(run.Case.StartDate)} " : "")}at {moisture}.";
    }

    /// <summary>What the lines, the shading and the bar are, and what run this is.</summary>
    public static string Footnote(DryingRun run)
    {
        var lot = run.Case.Pieces is { } pieces ? FormattableString.Invariant($"a lot of {pieces} splits") : "a split whose exact rate is not known";
        var ready = run.Window.From.Middle is null ? "" : " Ready: from when half of the lot has come into your band to when half has left it; thin lines, the middle eight in ten for beginning (above) and end (below).";
        return FormattableString.Invariant(
            $"Cuts, core, mean, shell and end: the typical split. Shaded: the core in the middle eight in ten of {run.Members} runs for {lot}; mid lot, half are above.{ready} Model {run.ModelVersion}, seed\u00a0{run.Seed}.");
    }

    /// <summary>The cook's band, such as "18–20".</summary>
    public static string Band(DryingRun run) => $"{Edge(run.Window.BandLow)}–{Edge(run.Window.BandHigh)}";

    /// <summary>An edge of the band, in percent.</summary>
    public static string Edge(double fraction) => FormattableString.Invariant($"{100 * fraction:0.#}");

    /// <summary>Whether a core is in the cook's band.</summary>
    public static bool IsInBand(DryingRun run, double core) => core >= run.Window.BandLow && core <= run.Window.BandHigh;

    /// <summary>Where a core stands beside the cook's band.</summary>
    public static string Verdict(DryingRun run, double core) =>
        core > run.Window.BandHigh ? "core too wet" : core < run.Window.BandLow ? "core too dry" : "core in band";

    /// <summary>A day by the calendar, or its number where the start has no date.</summary>
    public static string When(DryingRun run, double day) => run.Case.Start.IsDated ? CalendarWords.Date(DateOf(run, day)) : FormattableString.Invariant($"day\u00a0{day:0.#}");

    /// <summary>The whole picture for those who do not see it.</summary>
    public static string Description(DryingRun run)
    {
        var days = run.Snapshots.Select(snapshot => FormattableString.Invariant($"day {snapshot.Day:0.#}: ") + $"core {Percent(At(run, run.Typical.Core, snapshot.Day))}, shell {Percent(At(run, run.Typical.Shell, snapshot.Day))}");
        return $"{Answer(run)} {Detail(run)} {Subtitle(run)} The split is drawn cut open across and along, light where dry and dark where wet. In % dry basis, {string.Join("; ", days)}.";
    }

    /// <summary>Percent with the digits that mean something: whole above 30, else one decimal.</summary>
    public static string Percent(double fraction) => (100 * fraction).ToString(fraction >= 0.2995 ? "0" : "0.0", CultureInfo.InvariantCulture);

    /// <summary>Value of a series at a day, on the line between reports.</summary>
    public static double At(DryingRun run, double[] series, double day)
    {
        var after = Array.FindIndex(run.Days, report => report >= day);
        if (after < 0) return series[^1];
        if (after == 0) return series[0];
        var share = (day - run.Days[after - 1]) / (run.Days[after] - run.Days[after - 1]);
        return series[after - 1] + share * (series[after] - series[after - 1]);
    }

    private static string Drawn(DryingRun run) => run.Charge is { Classes: [var first, _, ..] classes } ? $"Drawn here: {first.Class.Name}, the first of {classes.Count} classes in the box. " : "";

    private static string Opening(DryingRun run, double from) =>
        from < 0.5 ? "The core is in your band from the start" : $"Ready from about {When(run, from)}";

    private static string SpreadOf(DryingRun run, DaySpread spread) => (spread.Early, spread.Late) switch
    {
        ({ } early, { } late) when late - early >= 1 => $" (8\u00a0in\u00a010 chances: {Range(run, early, late)})",
        ({ } early, null) => $" (8\u00a0in\u00a010 chances: {When(run, early)} to past the end of this run)",
        _ => "",
    };

    private static string Closing(DryingRun run, double from) => run.Window.Until.Middle switch
    {
        { } until when until - from < 3 => FormattableString.Invariant($", for only {24 * (until - from):0} hours"),
        { } until => $", until about {When(run, until)}",
        null => $", and still in your band when the run ends, {When(run, run.Days[^1])}",
    };

    private static string NotReady(DryingRun run)
    {
        if (run.Typical.Core[0] < run.Window.BandLow) return "The core is drier than your band from the start.";
        var chance = run.Window.ChanceReady > 0.005 ? FormattableString.Invariant($" (chances that it is by then: {100 * run.Window.ChanceReady:0} in 100)") : "";
        return $"Not ready by {When(run, run.Days[^1])}, when the run ends{chance}.";
    }

    /// <summary>Day the typical core comes into the band; null where it does not, or starts below it.</summary>
    private static double? ReadyDay(DryingRun run) => run.Window.From.Middle is { } day && (day > 0.5 || run.Typical.Core[0] >= run.Window.BandLow) ? day : null;

    private static string Range(DryingRun run, double early, double late) =>
        run.Case.Start.IsDated ? CalendarWords.Range(DateOf(run, early), DateOf(run, late)) : $"{When(run, early)} to {When(run, late)}";

    private static LocalDate DateOf(DryingRun run, double day) => CalendarWords.After(run.Case.StartDate, day);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
