using Rickyard.Core.Learning;
using static System.FormattableString;

namespace Rickyard.Learn;

/// <summary>What was learnt of the lot, unknown by unknown, where readings moved or narrowed it.</summary>
internal static class LearntSentences
{
    /// <summary>Part of the spread that must be gone to be worth a sentence; judgement.</summary>
    private const double WorthTelling = 0.15;

    /// <summary>Move of the middle, as part of the spread before, that is worth a sentence; judgement.</summary>
    private const double WorthMoving = 0.2;

    private const double WorthPoints = 0.1;
    private const string Times = "× ";

    public static IReadOnlyList<string> Of(LearningRun run)
    {
        var told = run.Unknowns.Where(IsTold).OrderByDescending(one => one.Learnt).Select(Sentence).ToList();
        return told.Count > 0 ? told : ["Nothing that the case left open was narrowed by much: what was read agrees with what the case says already."];
    }

    private static bool IsTold(LearntUnknown unknown) =>
        unknown.Learnt >= WorthTelling || Math.Abs(unknown.After.Middle - unknown.Before.Middle) >= WorthMoving * (unknown.Before.High - unknown.Before.Low);

    private static string Sentence(LearntUnknown unknown) => unknown.Unit switch
    {
        "points" => Meter(unknown),
        _ when unknown.Unit.StartsWith(Times, StringComparison.Ordinal) => Factor(unknown),
        "% dry basis" => Invariant($"{Capital(unknown.Name)}: {unknown.After.Middle:0.#} % dry basis ({unknown.After.Low:0.#} to {unknown.After.High:0.#}); the case alone said {unknown.Before.Middle:0.#} ({unknown.Before.Low:0.#} to {unknown.Before.High:0.#})."),
        _ => Invariant($"{Capital(unknown.Name)}: {unknown.After.Middle:0.##} {unknown.Unit} ({unknown.After.Low:0.##} to {unknown.After.High:0.##}); the case alone said {unknown.Before.Middle:0.##} ({unknown.Before.Low:0.##} to {unknown.Before.High:0.##})."),
    };

    private static string Factor(LearntUnknown unknown)
    {
        var isRate = unknown.Name.StartsWith("drying rate", StringComparison.Ordinal);
        var words = isRate ? new FactorWords("slower", "faster") : new FactorWords("less", "more");
        var usual = unknown.Unit.Split(' ')[^1];
        var range = $"({words.Between(unknown.After.Low, unknown.After.High)}); the case alone left it open {words.Between(unknown.Before.Low, unknown.Before.High)}.";
        var middle = words.Of(unknown.After.Middle);
        if (isRate) return $"This lot dries {(middle == "as much" ? $"as fast as {usual}" : $"{middle} than {usual}")} {range}";
        return $"{Capital(unknown.Name)}: {(middle.EndsWith("as much", StringComparison.Ordinal) ? $"{middle} as {usual}" : $"{middle} than {usual}")} {range}";
    }

    private static string Meter(LearntUnknown unknown)
    {
        var middle = unknown.After.Middle;
        var says = Math.Abs(middle) < WorthPoints ? "it shows about what is there" : Invariant($"it shows {Math.Abs(middle):0.0} points too {(middle > 0 ? "much" : "little")}");
        return Invariant($"{Capital(unknown.Name)}, after correction: {says} ({unknown.After.Low:+0.0;-0.0;0.0} to {unknown.After.High:+0.0;-0.0;0.0} points).");
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
