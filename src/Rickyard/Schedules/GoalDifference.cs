using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using Rickyard.Web.Pictures.Schedules;
using static System.FormattableString;

namespace Rickyard.Schedules;

/// <summary>Why usable now and even are different goals, told with this charge's own numbers, of its heaviest class for which both are known.</summary>
internal static class GoalDifference
{
    private const double Near = 0.015;
    private const double NearCore = 0.02;

    public static IReadOnlyList<string> Of(ScheduleAnswer answer)
    {
        var told = answer.Best.Classes.OrderByDescending(pull => pull.MassAtLoading).Select(pull => Of(answer, pull.Class, ScheduleWords.ClassOf(answer, pull).Name));
        return told.MaxBy(sentences => sentences.Count)!;
    }

    private static List<string> Of(ScheduleAnswer answer, int number, string name) => [.. new[] { ByCore(answer, number, name), ByMean(answer, number, name) }.OfType<string>()];

    private static string? ByCore(ScheduleAnswer answer, int number, string name)
    {
        var middle = (answer.Request.BandLow + answer.Request.BandHigh) / 2;
        var found = Nearest(answer, number, pull => Math.Abs(pull.CoreAtPull - middle) <= NearCore, pull => Math.Abs(pull.CoreAtPull - middle));
        return found is not var (candidate, pull) ? null
            : $"Usable now is not even: when the core of \"{name}\" comes to {Say.Moisture(pull.CoreAtPull)} in the stream of air{At(candidate)}, its mean is already {Say.Percent(pull.MeanAtPull)} and its shell {Say.Percent(pull.ShellAtPull)}, so resting can only end near {Say.Moisture(pull.MeanAtPull)}.";
    }

    private static string? ByMean(ScheduleAnswer answer, int number, string name)
    {
        var middle = (answer.Request.BandLow + answer.Request.BandHigh) / 2;
        var found = Nearest(answer, number, pull => Math.Abs(pull.MeanAtPull - middle) <= Near, pull => Math.Abs(pull.MeanAtPull - middle));
        return found is not var (candidate, pull) ? null
            : Invariant($"To finish even near {100 * middle:0.#} % dry basis the drying of \"{name}\" stops when the mean is there, on day {pull.PullDay:0.0}{At(candidate)} with the core still at {Say.Percent(pull.CoreAtPull)} and the shell at {Say.Percent(pull.ShellAtPull)}; {pull.RestDays:0.0} days of closed warm rest then bring it to core {Say.Percent(pull.Core)}, shell {Say.Percent(pull.Shell)} % dry basis.");
    }

    private static string At(ScheduleCandidate candidate) => double.IsNaN(candidate.Celsius) ? "" : Invariant($" at {candidate.Celsius:0.#} °C");

    /// <summary>The fitting pull in the setting nearest the chosen one.</summary>
    private static (ScheduleCandidate Candidate, ClassPull Pull)? Nearest(ScheduleAnswer answer, int number, Func<ClassPull, bool> fits, Func<ClassPull, double> miss) => answer.Tried.Prepend(answer.Best)
        .SelectMany(candidate => candidate.Classes.Where(pull => pull.Class == number && pull.PullDay is not null && fits(pull)).Select(pull => (candidate, pull)))
        .OrderBy(found => Away(found.candidate, answer.Best)).ThenBy(found => miss(found.pull)).ThenByDescending(found => found.pull.RestDays)
        .Select(found => ((ScheduleCandidate, ClassPull)?)found).FirstOrDefault();

    private static double Away(ScheduleCandidate one, ScheduleCandidate best) =>
        double.IsNaN(one.Celsius) ? 0 : Math.Abs(one.Celsius - best.Celsius) + (one.HumidityLimit == best.HumidityLimit ? 0 : 0.5);
}
