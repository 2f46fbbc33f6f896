using System.Diagnostics;
using Rickyard.Testing.Learning;
using static System.FormattableString;

namespace Rickyard.Benchmarks;

/// <summary>The full study of learning on lots made up from the prior: rank histograms, coverage, sharpness, a wrong prior. Prints the tables of honesty.md.</summary>
internal static class HonestyTable
{
    private static readonly int[] Stages = [0, 1, 3, 5, 10];

    public static void Run(int lots, int members)
    {
        var watch = Stopwatch.StartNew();
        var maker = new SyntheticLots(StudyPlan.Ten, members, seed: 1);
        var done = 0;
        var report = HonestyStudy.Run(maker, lots, Stages, () => Console.Error.Write(Invariant($"\r{Interlocked.Increment(ref done)} of {lots}")));
        Console.Error.WriteLine();
        Console.WriteLine(Invariant($"{lots} lots, {members} members, {watch.Elapsed.TotalSeconds:0} s."));
        Ranks(report);
        Scores(report);
        WrongPrior(maker);
    }

    private static void Ranks(HonestyReport report)
    {
        Console.WriteLine("\n| ranks of | " + string.Join(" | ", Enumerable.Range(1, 10)) + " | chance if flat |");
        Console.WriteLine("|---|" + string.Concat(Enumerable.Repeat("---:|", 11)));
        foreach (var histogram in report.Histograms) Console.WriteLine(Invariant($"| {histogram.Name} | {string.Join(" | ", histogram.Counts())} | {histogram.Chance():0.00} |"));
    }

    private static void Scores(HonestyReport report)
    {
        Console.WriteLine("\n| looks known | truths in the 90 % band | share | CRPS of an unseen core, points | CRPS of the middle core, points |");
        Console.WriteLine("|---:|---:|---:|---:|---:|");
        foreach (var stage in report.Stages)
            Console.WriteLine(Invariant($"| {stage.Looks} | {stage.Inside} of {stage.Lots} | {100.0 * stage.Inside / stage.Lots:0.0} % | {100 * stage.UnseenScore:0.00} | {100 * stage.MiddleScore:0.00} |"));
    }

    private static void WrongPrior(SyntheticLots maker)
    {
        Console.WriteLine("\n| looks known | middle core at the end: error of the middle forecast, points | true value inside the 90 % band |");
        Console.WriteLine("|---:|---:|---:|");
        foreach (var score in WrongPriorStudy.Run(maker, 24, Stages)) Console.WriteLine(Invariant($"| {score.Looks} | {100 * score.Error:0.00} | {score.Inside} of {score.Lots} |"));
    }
}
