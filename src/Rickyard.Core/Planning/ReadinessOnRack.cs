using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Planning;

/// <summary>
/// The day by which enough members of one width are ready: what <see cref="SizeRuns"/> tells of the same, without the typical split, each group of members only until the last of it
/// is ready, and the groups that were slowest before first, so that a size that is not ready in time shows it early.
/// </summary>
internal sealed class ReadinessOnRack(DryingCase drying, SizeCalendarRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, CancellationToken cancellation)
{
    private readonly MemberDraw[][] _draws = [.. MemberDraw.Spread(request.Members, request.Seed).Chunk(LaneGrid.FullLanes)];
    private int[] _order = [.. Enumerable.Range(0, request.Members / LaneGrid.FullLanes)];

    private int Needed => (int)Math.Ceiling(request.Confidence * request.Members - 1e-9);

    /// <summary>That day, or infinity where it is not within the run. [d]</summary>
    /// <param name="width">[m]</param>
    /// <param name="days">Length of the run. [d]</param>
    internal double Day(double width, double days)
    {
        var sized = SizeRuns.Sized(drying, width) with { Days = days };
        var reports = SizeRuns.Reports(days);
        double[] times = [.. Enumerable.Range(0, reports + 1).Select(report => report * days / reports)];
        var run = new GroupRun(sized, new CaseAir(sized, weather), times, cancellation);
        List<(int Group, double[] First)> firsts = [];
        foreach (var group in _order)
        {
            firsts.Add((group, First(run, sized, group, times)));
            if (firsts.Sum(one => one.First.Count(double.IsInfinity)) > request.Members - Needed) return double.PositiveInfinity;
        }

        _order = [.. firsts.OrderByDescending(one => one.First.Max()).Select(one => one.Group)];
        return firsts.SelectMany(one => one.First).Order().ElementAt(Needed - 1);
    }

    private double[] First(GroupRun run, DryingCase sized, int group, double[] times)
    {
        MemberWood[] members = [.. _draws[group].Select(draw => MemberWood.Of(sized, draw))];
        var tracks = run.Run(members, GroupConditions.Of(group, request.Seed), new HashSet<string>(), null, (so, report) => so.All(track => track.Core[report] <= request.BandHigh));
        return [.. tracks.Select(track => Ready(times, track))];
    }

    // Reports after the end of a group are empty; a core that was ready before stays found, since the first crossing is what is looked for.
    private double Ready(double[] times, Track track) => Bands.FirstAtOrBelow(times, track.Core, request.BandHigh, 0);
}
