using System.Collections.Concurrent;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>Where candidates are tried: one box, one charge, one goal.</summary>
internal sealed class TrialBench(BoxPlan plan, IReadOnlyList<ChargeClass> charge, OutsideSeries outside, GoalMeasure goal, double latestDays)
{
    private readonly ChargeShape[] _shapes = [.. charge.Select(one => ChargeShape.Of(one, ScheduleSearch.Coarse))];

    internal IReadOnlyList<ChargeClass> Charge => charge;

    internal GoalMeasure Goal => goal;

    internal double LatestDays => latestDays;

    /// <summary>Try every pull and rest of every setting; stopped, those there are.</summary>
    /// <exception cref="OperationCanceledException">Stopped before anything had been tried.</exception>
    internal TrialResults TryAll(IReadOnlyList<BoxSettings> settings, IProgress<double>? progress, CancellationToken cancellation)
    {
        var found = new ConcurrentDictionary<int, (DryingTrack Track, ScheduleCandidate[] Candidates)>();
        try
        {
            Parallel.For(0, settings.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
            {
                found[i] = Try(settings[i], cancellation);
                progress?.Report(found.Count / (double)settings.Count);
            });
        }
        catch (OperationCanceledException) when (!found.IsEmpty)
        {
            // What has been tried so far is an answer.
        }

        var inOrder = found.OrderBy(one => one.Key).Select(one => one.Value).ToList();
        return new([.. inOrder.Select(one => one.Track)], [.. inOrder.SelectMany(one => one.Candidates)]);
    }

    /// <summary>Least miss of another charge, or of more days, in one setting; infinity where not all classes get there.</summary>
    internal ScheduleCandidate? Nearest(BoxSettings settings, IReadOnlyList<ChargeClass> other, double days)
    {
        var bench = new TrialBench(plan, other, outside, goal, days);
        return bench.Try(settings, CancellationToken.None).Candidates.Where(one => one.Classes.All(c => c.PullDay is not null)).MinBy(one => one.Miss);
    }

    private (DryingTrack Track, ScheduleCandidate[] Candidates) Try(BoxSettings settings, CancellationToken cancellation)
    {
        var track = DryingTrack.Of(plan, settings, _shapes, outside, latestDays, cancellation);
        return (track, [.. new CandidateTrial(plan, track, _shapes, outside, goal, latestDays).All()]);
    }
}
