using NodaTime;
using Rickyard.Core.Drying;
using Rickyard.Core.Learning;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Learning;

/// <summary>What the picture of a forecast that has learnt says in words. Moisture is in % dry basis; spans hold 8 chances in 10.</summary>
public static class LearningWords
{
    /// <summary>The answer in one sentence.</summary>
    public static string Answer(LearningRun run)
    {
        var core = At(run, run.Median.Core, run.Today);
        return run.Window switch
        {
            var window when core < window.BandLow => Invariant($"Drier than your band already: core {RunWords.Percent(core)}\u00a0%\u00a0dry\u00a0basis today."),
            { From.Middle: null } => $"Not ready by {When(run, run.Days[^1])}, when the run ends.",
            { From.Middle: { } from } when from <= run.Today => $"Ready now{Until(run)}.",
            var window => $"Ready from about {When(run, window.From.Middle!.Value)}{Span(run, window.From)}{Until(run)}.",
        };
    }

    /// <summary>The day before any reading, and now.</summary>
    public static string Change(LearningRun run) =>
        Invariant($"Ready day before the {(run.Observations.Count == 1 ? "reading" : $"{run.Observations.Count} readings")}: {Range(run, run.WindowBefore.From)}; now: {Range(run, run.Window.From)}.");

    /// <summary>What is inside today.</summary>
    public static string Today(LearningRun run)
    {
        string Value(double[] series) => RunWords.Percent(At(run, series, run.Today));
        var share = run.Case.Pieces > 1 ? Invariant($" {100 * At(run, [.. run.ShareInBand.Select(one => one.Middle)], run.Today):0}\u00a0% of the splits are in your band, {Band(run)}.") : $" Your band for the core is {Band(run)}.";
        return $"Today, {When(run, run.Today)}, the middle has core {Value(run.Median.Core)} (8\u00a0in\u00a010: {Value(run.LowTenth.Core)} to {Value(run.HighTenth.Core)}), shell {Value(run.Median.Shell)}, whole piece {Value(run.Median.Mean)}\u00a0%\u00a0dry\u00a0basis.{share}";
    }

    /// <summary>What lines and shades are, and what run this is.</summary>
    public static string Footnote(LearningRun run) => Invariant(
        $"Full lines up to today, dashed from then on. Shaded: the core of 8 in 10 splits{(run.Case.Pieces > 1 ? "; darker: of the lot's middle split" : "")}. Dotted outline: the same before any reading. Bars on readings: 9 in 10. Weighings stand as moisture of the whole piece by its likely dry mass. Model {run.ModelVersion}, {run.Request.Members} members, seed\u00a0{run.Request.Seed}.");

    /// <summary>The whole picture for those who do not see it.</summary>
    public static string Description(LearningRun run)
    {
        var suspects = run.Observations.Where(fit => fit.IsSuspect).Select(fit => Invariant($"line {fit.Observation.From.Row} ({fit.Observation.From.Words})")).ToList();
        var wrong = suspects.Count > 0 ? $" Can hardly be right: {string.Join("; ", suspects)}." : "";
        var pieces = run.Pieces.Select(piece => $"{piece.Piece}: core {RunWords.Percent(At(run, piece.Median.Core, run.Today))} today");
        var marked = run.Pieces.Count > 0 ? $" Marked splits, {string.Join("; ", pieces)}." : "";
        return $"{Answer(run)} {Change(run)} {Today(run)}{marked}{wrong} Drawn: core, whole piece and shell through time, the core's band before and after the {run.Observations.Count} readings, the readings with their error bars, your band as a stripe{(run.Case.Pieces > 1 ? ", and beneath, the share of splits in it" : "")}.";
    }

    /// <summary>The cook's band, such as "18–20".</summary>
    public static string Band(LearningRun run) => $"{RunWords.Edge(run.Window.BandLow)}–{RunWords.Edge(run.Window.BandHigh)}";

    /// <summary>Day and month, or the number of the day.</summary>
    public static string ShortDay(LearningRun run, double day) => run.Case.Start.IsDated ? CalendarWords.DayAndMonth(DateOf(run, day)) : Invariant($"day\u00a0{day:0.#}");

    /// <summary>Value of a series at a day, on the line between reports.</summary>
    public static double At(LearningRun run, IReadOnlyList<double> series, double day)
    {
        var after = Array.FindIndex(run.Days, report => report >= day);
        if (after < 0) return series[^1];
        if (after == 0) return series[0];
        var share = (day - run.Days[after - 1]) / (run.Days[after] - run.Days[after - 1]);
        return series[after - 1] + share * (series[after] - series[after - 1]);
    }

    private static string Until(LearningRun run) => run.Window.Until.Middle is { } until ? $", at its best until about {When(run, until)}" : ", and still when the run ends";

    private static string Span(LearningRun run, DaySpread spread) => $" (8\u00a0in\u00a010 chances: {Range(run, spread)})";

    private static string Range(LearningRun run, DaySpread spread) => (spread.Early, spread.Late) switch
    {
        (null, _) => $"after {When(run, run.Days[^1])}",
        ({ } early, null) => $"{When(run, early)} to past the end of this run",
        ({ } early, { } late) => run.Case.Start.IsDated ? CalendarWords.Range(DateOf(run, early), DateOf(run, late)) : $"{When(run, early)} to {When(run, late)}",
    };

    private static string When(LearningRun run, double day) => run.Case.Start.IsDated ? CalendarWords.Date(DateOf(run, day)) : Invariant($"day\u00a0{day:0.#}");

    private static LocalDate DateOf(LearningRun run, double day) => CalendarWords.After(run.Case.StartDate, day);
}
