namespace Rickyard.Core.Boxes.Schedules;

/// <summary>All that was tried.</summary>
/// <param name="Tracks">One a setting.</param>
/// <param name="Candidates">All pulls and rests.</param>
internal sealed record TrialResults(IReadOnlyList<DryingTrack> Tracks, IReadOnlyList<ScheduleCandidate> Candidates);
