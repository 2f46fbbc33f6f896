using Rickyard.Core.Drying;

namespace Rickyard.Core.Verification;

/// <summary>Every published fact that is set beside the model without being scored.</summary>
internal static class BesideFacts
{
    /// <summary>All, by subject.</summary>
    /// <param name="runs">Runs of the measured cases, by number of the case.</param>
    /// <param name="cancellation">Stops between runs.</param>
    internal static IReadOnlyList<BesideFact> All(ILookup<string, DryingRun> runs, CancellationToken cancellation) =>
        [.. GreenFacts.All(), .. EquilibriumFacts.All(), .. LumberFacts.All(cancellation), .. TransportFacts.All(cancellation), .. GradientFacts.All(runs, cancellation)];
}
