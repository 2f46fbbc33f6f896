using System.Globalization;
using Rickyard.Core.Boxes;
using Rickyard.Core.Boxes.Schedules;
using static System.FormattableString;

namespace Rickyard.Web.Pictures.Schedules;

/// <summary>What a schedule says in words, in a picture and beside it. Moisture is in % dry basis throughout.</summary>
public static class ScheduleWords
{
    private const int MostNamed = 4;
    private const double WorthResting = 0.02;

    /// <summary>The answer in one sentence: how to set the box, when to pull what, and what comes of it; or by how much it cannot be done.</summary>
    public static string Answer(ScheduleAnswer answer)
    {
        var way = $"{Setting(answer.Best)}, {Pulls(answer)}{Rest(answer)}";
        if (answer.MeetsGoal) return $"Dry at {way}: {Outcome(answer)} by {Day(answer, answer.Best.Days)}, within your {Number(answer.Request.LatestDays)} days.";
        return $"It cannot be done in {Number(answer.Request.LatestDays)} days: the nearest way leaves {(answer.Request.Goal == ChargeGoal.Even ? "a core or shell" : "a core")} {Points(answer.Best.Miss)} outside {Band(answer)}{Late(answer)}. "
            + $"That way is to dry at {way}.";
    }

    /// <summary>The answer as short as it can be: by when, and how good.</summary>
    public static string Headline(ScheduleAnswer answer)
    {
        var even = answer.Request.Goal == ChargeGoal.Even;
        if (!answer.MeetsGoal) return $"Not possible in {Number(answer.Request.LatestDays)} days: the nearest way leaves a core{(even ? " or shell" : "")} {Points(answer.Best.Miss)} outside {Band(answer)}.";
        return even
            ? $"Even at {Band(answer)} by {Day(answer, answer.Best.Days)}: core and shell at most {Points(answer.Best.Gap)} apart."
            : $"Every core in {Band(answer)} by {Day(answer, answer.Best.Days)}; shells up to {Points(answer.Best.Gap)} drier.";
    }

    /// <summary>How to run the box, where the pull list stands beneath.</summary>
    public static string Way(ScheduleAnswer answer)
    {
        var needed = answer.MeetsGoal ? $" Needed within {Number(answer.Request.LatestDays)} days." : "";
        return $"Dry at {Setting(answer.Best)}; pull each class when its marked split weighs what stands below{Rest(answer)}.{needed}{(LateNames(answer) is { Length: > 0 } late ? $" Not in time: {late}." : "")}";
    }

    /// <summary>"62 °C with the vent opening at 50 % relative humidity".</summary>
    public static string Setting(ScheduleCandidate candidate) => candidate.HumidityLimit is { } humidity
        ? Invariant($"{Warmth(candidate)} with the vent opening at {100 * humidity:0} % relative humidity")
        : $"{Warmth(candidate)} with the vent as the box has it";

    /// <summary>"62 °C, 50 %".</summary>
    public static string ShortSetting(ScheduleCandidate candidate) => candidate.HumidityLimit is { } humidity ? Invariant($"{Warmth(candidate)}, {100 * humidity:0} %") : Warmth(candidate);

    /// <summary>"day 2.1", with the date where the start has one.</summary>
    public static string Day(ScheduleAnswer answer, double day) => answer.Case.Start.IsDated
        ? Invariant($"day {day:0.0} ({CalendarWords.DayAndMonth(CalendarWords.After(answer.Case.StartDate, day)).Replace('\u00a0', ' ')})")
        : Invariant($"day {day:0.0}");

    /// <summary>"18–20 % dry basis".</summary>
    public static string Band(ScheduleAnswer answer) => Invariant($"{100 * answer.Request.BandLow:0.#}–{100 * answer.Request.BandHigh:0.#} % dry basis");

    /// <summary>"1.2 points".</summary>
    public static string Points(double fraction) => Invariant($"{100 * Math.Abs(fraction):0.0} points");

    /// <summary>"19.2 / 20.1 / 18.0".</summary>
    public static string Three(double mean, double core, double shell) => $"{RunWords.Percent(mean)} / {RunWords.Percent(core)} / {RunWords.Percent(shell)}";

    /// <summary>The class that a pull is of.</summary>
    public static ChargeClass ClassOf(ScheduleAnswer answer, ClassPull pull) => answer.Run.Charge!.Classes[pull.Class].Class;

    /// <summary>What a candidate costs beside the chosen one's run, or null where no tariff says.</summary>
    public static string? Cost(ScheduleAnswer answer, ScheduleCandidate candidate) =>
        answer.Run.Charge is { Plan.Price: { } price } charge && EnergyCost.Like(charge, candidate.EnergyJoules) is { } cost ? price.Write(cost) : null;

    /// <summary>The whole picture for those who do not see it.</summary>
    public static string Description(ScheduleAnswer answer)
    {
        var pulls = answer.Best.Classes.Where(pull => pull.PullDay is not null)
            .Select(pull => Invariant($"{ClassOf(answer, pull).Name}: pull on day {pull.PullDay:0.0} when a split weighs {pull.MassAtPull:0.00} kg"));
        var trade = TradeOffRow.Of(answer).Select(row => Invariant($"{row.Number}: {row.Candidate.Days:0.0} days, {row.Candidate.EnergyJoules / EnergyCost.JoulesPerKilowattHour:0} kWh, gap {Points(row.Candidate.Gap)}"));
        return $"{Answer(answer)} Pull list: {string.Join("; ", pulls)}. Trade-off: {string.Join("; ", trade)}.";
    }

    private static string Warmth(ScheduleCandidate candidate) => double.IsNaN(candidate.Celsius) ? "heater off" : Invariant($"{candidate.Celsius:0.#} °C");

    private static string Pulls(ScheduleAnswer answer)
    {
        var pulled = answer.Best.Classes.Where(pull => pull.PullDay is not null).OrderBy(pull => pull.PullDay).ToList();
        if (pulled.Count == 0) return "keeping all of it in to the end";
        if (pulled.Count > MostNamed) return $"pulling {pulled.Count} classes one by one from {Name(answer, pulled[0])} to {Name(answer, pulled[^1])}";
        var names = pulled.Select(pull => Name(answer, pull)).ToList();
        return $"pulling {(names.Count > 1 ? $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}" : names[0])}";
    }

    private static string Name(ScheduleAnswer answer, ClassPull pull) => $"{ClassOf(answer, pull).Name} on {Day(answer, pull.PullDay!.Value)}";

    private static string Rest(ScheduleAnswer answer) => answer.Best.Classes.Any(pull => pull.RestDays > WorthResting)
        ? $", each then resting closed up{(double.IsNaN(answer.Best.RestCelsius) ? "" : Invariant($" at {answer.Best.RestCelsius:0.#} °C"))}"
        : "";

    private static string Outcome(ScheduleAnswer answer) => answer.Request.Goal == ChargeGoal.Even
        ? $"core, shell and mean are all at or near {Band(answer)} (gap at most {Points(answer.Best.Gap)})"
        : $"every core is in {Band(answer)} (the shell up to {Points(answer.Best.Gap)} drier)";

    private static string Late(ScheduleAnswer answer) => LateNames(answer) is { Length: > 0 } late ? $"; {late} cannot be pulled in time" : "";

    private static string LateNames(ScheduleAnswer answer) => string.Join(", ", answer.Best.Classes.Where(pull => pull.PullDay is null).Select(pull => ClassOf(answer, pull).Name));

    private static string Number(double days) => days.ToString("0.#", CultureInfo.InvariantCulture);
}
