using Rickyard.Core.Boxes.Schedules;
using Rickyard.Dry;
using Rickyard.Web.Pictures.Schedules;
using static System.FormattableString;

namespace Rickyard.Schedules;

/// <summary>Why usable now and even are different goals, told with this charge's own numbers for its heaviest class.</summary>
internal static class GoalDifference
{
    private const double AtOnce = 0.05;
    private const double Near = 0.015;

    public static IReadOnlyList<string> Of(ScheduleAnswer answer)
    {
        var heaviest = answer.Best.Classes.MaxBy(pull => pull.MassAtLoading)!.Class;
        var name = ScheduleWords.ClassOf(answer, answer.Best.Classes.First(pull => pull.Class == heaviest)).Name;
        return [.. new[] { ByCore(answer, heaviest, name), ByMean(answer, heaviest, name) }.OfType<string>()];
    }

    private static string? ByCore(ScheduleAnswer answer, int heaviest, string name)
    {
        var (low, high) = (answer.Request.BandLow, answer.Request.BandHigh);
        var found = Nearest(answer, heaviest, pull => pull.RestDays < AtOnce && pull.CoreAtPull >= low - 0.005 && pull.CoreAtPull <= high + 0.005, pull => Math.Abs(pull.CoreAtPull - (low + high) / 2));
        return found is not var (candidate, pull) ? null
            : $"Usable now is not even: when the core of {name} comes to {Say.Moisture(pull.CoreAtPull)} in the stream of air{At(candidate)}, its mean is already {Say.Percent(pull.MeanAtPull)} and its shell {Say.Percent(pull.ShellAtPull)}, so resting can only end near {Say.Moisture(pull.MeanAtPull)}.";
    }

    private static string? ByMean(ScheduleAnswer answer, int heaviest, string name)
    {
        var middle = (answer.Request.BandLow + answer.Request.BandHigh) / 2;
        var found = Nearest(answer, heaviest, pull => Math.Abs(pull.MeanAtPull - middle) <= Near, pull => Math.Abs(pull.MeanAtPull - middle));
        return found is not var (candidate, pull) ? null
            : Invariant($"To finish even near {100 * middle:0.#} % dry basis the drying of {name} stops when the mean is there, on day {pull.PullDay:0.0}{At(candidate)} with the core still at {Say.Percent(pull.CoreAtPull)} and the shell at {Say.Percent(pull.ShellAtPull)}; {pull.RestDays:0.0} days of closed warm rest then bring it to core {Say.Percent(pull.Core)}, shell {Say.Percent(pull.Shell)} % dry basis.");
    }

    private static string At(ScheduleCandidate candidate) => double.IsNaN(candidate.Celsius) ? "" : Invariant($" at {candidate.Celsius:0.#} °C");

    /// <summary>The fitting pull in the setting nearest the chosen one.</summary>
    private static (ScheduleCandidate Candidate, ClassPull Pull)? Nearest(ScheduleAnswer answer, int number, Func<ClassPull, bool> fits, Func<ClassPull, double> miss) => answer.Tried.Prepend(answer.Best)
        .SelectMany(candidate => candidate.Classes.Where(pull => pull.Class == number && pull.PullDay is not null && fits(pull)).Select(pull => (candidate, pull)))
        .OrderBy(found => Away(found.candidate, answer.Best)).ThenBy(found => miss(found.pull))
        .Select(found => ((ScheduleCandidate, ClassPull)?)found).FirstOrDefault();

    private static double Away(ScheduleCandidate one, ScheduleCandidate best) =>
        double.IsNaN(one.Celsius) ? 0 : Math.Abs(one.Celsius - best.Celsius) + (one.HumidityLimit == best.HumidityLimit ? 0 : 0.5);
}
