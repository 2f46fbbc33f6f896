using System.Diagnostics;
using Rickyard.Core.Learning;
using Rickyard.Testing.Learning;
using static System.FormattableString;

namespace Rickyard.Benchmarks;

/// <summary>Time of learning from an invented lot's looks, and how the answer moves with members and seed.</summary>
internal static class LearningTime
{
    private static readonly int[] Members = [64, 128, 256];
    private static readonly int[] Seeds = [1, 2, 3];

    public static void Run()
    {
        var looks = new SyntheticLots(StudyPlan.Ten, 64, 1).Make(5).Looks;
        LearningForecast.Run(StudyPlan.Case, looks, new(64), StudyPlan.Weather);
        Console.WriteLine("| members | seed | seconds | members per second | middle split ready: p10, p50, p90, day | Monte Carlo error of p50, days | effective draws | R-hat |");
        Console.WriteLine("|---:|---:|---:|---:|---|---:|---:|---:|");
        foreach (var members in Members)
        foreach (var seed in Seeds)
            Row(members, seed, looks);
    }

    private static void Row(int members, int seed, IReadOnlyList<Core.Measuring.Observed.Observation> looks)
    {
        var watch = Stopwatch.StartNew();
        var run = LearningForecast.Run(StudyPlan.Case, looks, new(members, Seed: seed), StudyPlan.Weather);
        var seconds = watch.Elapsed.TotalSeconds;
        var (from, health) = (run.LotWindow.From, run.Health);
        Console.WriteLine(Invariant($"| {members} | {seed} | {seconds:0.0} | {members / seconds:0} | {from.Early:0}, {from.Middle:0}, {from.Late:0} | {health.MonteCarloDays:0.0} | {health.EffectiveDraws:0} | {health.Convergence:0.000} |"));
    }
}
