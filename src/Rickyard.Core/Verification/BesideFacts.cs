using Rickyard.Core.Drying;

namespace Rickyard.Core.Verification;

internal static class BesideFacts
{
    internal static IReadOnlyList<BesideFact> All(ILookup<string, DryingRun> runs, CancellationToken cancellation) => [];
}
