using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Core.Planning;

/// <summary>The largest size that is ready in time, with the sizes tried about it.</summary>
public sealed record SizeAnswer
{
    /// <summary>The case as it was given.</summary>
    public required DryingCase Case { get; init; }

    /// <summary>What was asked.</summary>
    public required SizeRequest Request { get; init; }

    /// <summary>Largest width tried that is ready in time; null where not even <see cref="SizeSteps.Smallest"/> is. [m]</summary>
    public required double? Largest { get; init; }

    /// <summary>Every size that was run, by width.</summary>
    public required IReadOnlyList<SizeTrial> Trials { get; init; }

    /// <summary>The run of that size, or of the smallest where none is ready in time; it goes on somewhat beyond the day needed.</summary>
    public required DryingRun Run { get; init; }

    /// <summary>Whether even <see cref="SizeSteps.Largest"/> is ready in time.</summary>
    public bool LargestPasses => Largest >= SizeSteps.Largest - 1e-9;

    /// <summary>Wall time of the search, set by whoever holds the clock. [s]</summary>
    public double Seconds { get; init; }
}
