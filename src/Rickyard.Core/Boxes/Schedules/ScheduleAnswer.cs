using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>What a search found.</summary>
public sealed record ScheduleAnswer
{
    /// <summary>The case searched.</summary>
    public required DryingCase Case { get; init; }

    /// <summary>What was asked.</summary>
    public required ScheduleRequest Request { get; init; }

    /// <summary>The schedule to run: within the goal at the smallest gap worth its energy; where none is, the one nearest to it.</summary>
    public required ScheduleCandidate Best { get; init; }

    /// <summary>Whether <see cref="Best"/> meets the goal in time.</summary>
    public required bool MeetsGoal { get; init; }

    /// <summary>Candidates that no other beats in days, energy and gap at once, quickest first.</summary>
    public required IReadOnlyList<ScheduleCandidate> TradeOff { get; init; }

    /// <summary>All candidates tried.</summary>
    public required IReadOnlyList<ScheduleCandidate> Tried { get; init; }

    /// <summary>What would make the goal possible; empty where it is.</summary>
    public required IReadOnlyList<ScheduleCure> Cures { get; init; }

    /// <summary>The chosen schedule run at full resolution, each class with its bands.</summary>
    public required DryingRun Run { get; init; }

    /// <summary>Sentences: what the box cannot do, what was left out.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Whether the search was stopped before its end; the answer is then the best so far.</summary>
    public bool WasStopped { get; init; }

    /// <summary>Wall time, set by whoever holds the clock. [s]</summary>
    public double Seconds { get; init; }
}
