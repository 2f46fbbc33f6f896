using Rickyard.Core.Learning.Inference;
using static System.FormattableString;

namespace Rickyard.Core.Learning.Outlook;

/// <summary>Judges an answer by its chains, its stand-in and its fit of what was observed.</summary>
internal static class HealthReport
{
    private const double EnoughDraws = 200;
    private const double Agreeing = 1.1;
    private const double GoodStandIn = 0.06;

    /// <summary>Report.</summary>
    /// <param name="chains">Draws by chain.</param>
    /// <param name="readyDays">Ready day of each draw, chain after chain. [d]</param>
    /// <param name="standInError">Error of the stand-in's core, relative. [–]</param>
    /// <param name="core">Core today. [kg kg⁻¹]</param>
    /// <param name="fits">Observations beside what was expected.</param>
    internal static LearningHealth Of(IReadOnlyList<LotDraw>[] chains, double[] readyDays, double standInError, double core, IReadOnlyList<ObservationFit> fits)
    {
        var length = chains[0].Count;
        double[][] days = [.. Enumerable.Range(0, chains.Length).Select(chain => readyDays[(chain * length)..((chain + 1) * length)])];
        var effective = ChainHealth.EffectiveDraws(days);
        var convergence = Enumerable.Range(0, chains[0][0].Unknowns.Length)
            .Select(k => ChainHealth.SplitRHat([.. chains.Select(chain => chain.Select(draw => draw.Unknowns[k]).ToArray())])).DefaultIfEmpty(1).Max();
        var numbers = fits.Where(fit => fit.Value is not null).ToArray();
        var inside = numbers.Length == 0 ? 1 : numbers.Count(fit => fit.Value >= fit.Expected.Low && fit.Value <= fit.Expected.High) / (double)numbers.Length;
        return new(effective, convergence, standInError * core, MiddleError(readyDays, effective), inside, [.. Sentences(effective, convergence, standInError, inside, numbers.Length)]);
    }

    /// <summary>Standard error of a median of normal draws: 1.25 standard deviations over the root of their number.</summary>
    private static double MiddleError(double[] days, double effective)
    {
        var mean = days.Average();
        return 1.2533 * Math.Sqrt(days.Average(day => (day - mean) * (day - mean)) / effective);
    }

    private static IEnumerable<string> Sentences(double effective, double convergence, double standInError, double inside, int numbers)
    {
        if (effective < EnoughDraws) yield return Invariant($"The draws behind this are worth only {effective:0} independent ones; run it with more draws or members before trusting its tenths.");
        if (convergence > Agreeing) yield return Invariant($"Chains from different starts do not quite agree (R-hat {convergence:0.00}, wanted below {Agreeing:0.00}): the bands may be too narrow.");
        if (standInError > GoodStandIn) yield return Invariant($"The quick stand-in for the engine misses by {100 * standInError:0} % of the core's moisture here; more members would help.");
        if (numbers >= 5 && inside < 0.6) yield return Invariant($"Only {100 * inside:0} % of the readings lie where the others lead one to expect (about 90 % should): something about this lot is not in the case, or a meter is off.");
    }
}
