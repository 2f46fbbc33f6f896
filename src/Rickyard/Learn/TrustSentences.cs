using Rickyard.Core.Learning;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>How sure the answer itself is.</summary>
internal static class TrustSentences
{
    /// <summary>From a standard deviation to the half width of 9 in 10.</summary>
    private const double NineInTen = 1.645;

    public static IReadOnlyList<string> Of(LearningRun run)
    {
        var health = run.Health;
        var inside = run.Observations.Count(fit => fit.Value is not null) is var numbers and > 1
            ? Invariant($"{100 * health.InsideShare:0} % of the {numbers} readings with a number lie where the others lead one to expect them (about 90 % should). ")
            : "";
        var made = Invariant($"{inside}The middle day is sure to ±{Days(NineInTen * health.MonteCarloDays)} by the number of draws (worth {health.EffectiveDraws:0} independent ones); the quick stand-in for the engine misses the core by {100 * health.StandInError:0.0} points.");
        return [made, .. health.Sentences];
    }

    private static string Days(double days) => days switch
    {
        < 0.95 => Invariant($"{Math.Max(0.1, days):0.0} days"),
        < 1.5 => "1 day",
        _ => Invariant($"{days:0} days"),
    };
}
