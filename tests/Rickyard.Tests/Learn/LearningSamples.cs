using Rickyard.Testing.Learning;

namespace Rickyard.Tests.Learn;

/// <summary>Invented lots by name.</summary>
internal static class LearningSamples
{
    public static IReadOnlyDictionary<string, SampleLearning> All { get; } = new Dictionary<string, SampleLearning>
    {
        ["usual"] = SampleLearning.Usual,
        ["one-reading"] = SampleLearning.OneReading,
        ["unready"] = SampleLearning.Unready,
        ["over-dry"] = SampleLearning.OverDry,
        ["ready-piece"] = SampleLearning.ReadyPiece,
        ["bounds"] = SampleLearning.Usual with { Observed = [.. SampleObservations.Ten, SampleObservations.UnderRange, SampleObservations.LooseBark] },
    };
}
