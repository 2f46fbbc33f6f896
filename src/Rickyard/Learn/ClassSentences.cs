using Rickyard.Core.Learning;

namespace Rickyard.Learn;

/// <summary>The other classes of a charge, a sentence or three each.</summary>
internal static class ClassSentences
{
    /// <summary>All but the first class, which the story is of.</summary>
    public static IReadOnlyList<string> Of(LearningRun run) => [.. run.Classes.Skip(1).Select(one => $"{one.Name}: {Tell(one.Run)}")];

    private static string Tell(LearningRun run)
    {
        var answer = new AnswerSentences(run).Answer;
        return run.Observations.Count == 0 ? $"{answer} Nothing of it was read." : $"{answer} {TodaySentences.Inside(run)}";
    }
}
