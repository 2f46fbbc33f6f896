using Rickyard.Core.Learning.StandIns;
using Rickyard.Core.Learning.Unknowns;

namespace Rickyard.Core.Learning.Inference;

/// <summary>Several chains at once, from different starts.</summary>
internal static class LotChains
{
    /// <summary>Chains: two for each of two cores, enough to see whether they agree.</summary>
    internal const int Count = 4;

    private const int WarmUp = 120;

    /// <summary>Rounds from one draw kept to the next: by looking at effective draws (bench/README.md). Many pieces make a round dear and, since most are folded, no slower to mix.</summary>
    private static int RoundsApart(int pieces) => pieces > 15 ? 2 : 4;

    /// <summary>Draws by chain.</summary>
    /// <param name="unknowns">The lot's unknowns.</param>
    /// <param name="standIn">The engine's stand-in.</param>
    /// <param name="observed">What was observed.</param>
    /// <param name="draws">Draws in all.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal static IReadOnlyList<LotDraw>[] Run(LotUnknowns unknowns, StandIn standIn, ObservedLot observed, int draws, int seed, CancellationToken cancellation)
    {
        var chains = new IReadOnlyList<LotDraw>[Count];
        var fit = FirstFit.Of(new(unknowns, standIn, observed));
        Parallel.For(0, Count, new ParallelOptions { CancellationToken = cancellation }, chain => chains[chain] = new LotSampler(unknowns, standIn, observed, fit, unchecked(seed * 613 + chain))
            .Run(WarmUp, draws / Count, RoundsApart(observed.Pieces.Count), cancellation));
        return chains;
    }
}
