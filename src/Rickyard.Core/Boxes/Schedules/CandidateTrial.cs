using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>Tries all pulls and rests that branch off one track.</summary>
internal sealed class CandidateTrial(BoxPlan plan, DryingTrack track, IReadOnlyList<ChargeShape> charge, OutsideSeries outside, GoalMeasure goal, double latestDays)
{
    private const int Looks = 16;
    private readonly ClosedRest[] _rests = [.. charge.Select(shape => new ClosedRest(shape, RestCelsiusOf(track), outside.Pressure))];

    /// <summary>Parts of the whole rest that are tried: less rest is sooner and cheaper, and less even.</summary>
    private static readonly double[] RestParts = [0, 0.25, 0.5, 1];

    /// <summary>
    /// Every candidate of the track: all classes pulled at one mean, for each level, and rested less or more; all pulled by their cores; and each class where it does best.
    /// </summary>
    internal IEnumerable<ScheduleCandidate> All()
    {
        List<List<ClassPull>> full = [];
        foreach (var level in PullLevels.For(goal))
        {
            var pulls = Enumerable.Range(0, charge.Count).Select(i => Pull(i, track.DayAt(i, reading => reading.Mean, level))).ToList();
            foreach (var part in pulls.Any(one => one.Rest.Count > 1) ? RestParts : [1]) yield return Candidate(level, [.. pulls.Select(one => one.Rested(part))]);
            full.Add([.. pulls.Select(one => one.Rested(1))]);
        }

        foreach (var core in new[] { goal.BandHigh, goal.Middle })
        {
            full.Add([.. Enumerable.Range(0, charge.Count).Select(i => Pull(i, track.DayAt(i, reading => reading.Core, core)).Rested(0))]);
            yield return Candidate(null, full[^1]);
        }

        yield return Candidate(null, [.. Enumerable.Range(0, charge.Count).Select(i => full.Select(option => option[i]).MinBy(Demerit)!)]);
    }

    /// <summary>Of one class: first to get there, then to be even.</summary>
    private (bool, double, double) Demerit(ClassPull pull) =>
        (pull.PullDay is null, Math.Max(goal.Tolerance / 2, goal.Miss(pull.Core, pull.Mean, pull.Shell)), Math.Abs(pull.Gap));

    private double RestCelsius => RestCelsiusOf(track);

    private static double RestCelsiusOf(DryingTrack track) => track.Settings.Celsius ?? track.Series.AirCelsius[^1];

    private ScheduleCandidate Candidate(double? level, List<ClassPull> classes)
    {
        var pulled = classes.Max(one => one.PullDay ?? latestDays);
        var days = classes.Max(one => (one.PullDay ?? latestDays) + one.RestDays);
        return new(
            track.Settings.Celsius ?? double.NaN, track.Settings.HumidityLimit, level, RestCelsius, classes, days, track.EnergyAt(pulled) + Holding(days - pulled),
            classes.Select((one, i) => charge[i].Class.Pieces * (one.MassAtLoading - one.MassAtPull)).Sum(), classes.Max(one => Math.Abs(one.Gap)),
            classes.Max(one => goal.Miss(one.Core, one.Mean, one.Shell)));
    }

    private PulledClass Pull(int i, double? day)
    {
        var loaded = track.Readings[i][0].Mass;
        var last = track.Readings[i][^1];
        if (day is null && goal.Miss(last) <= goal.Tolerance) day = latestDays;
        if (day is null) return new(i, null, loaded, [(0, last)]);
        var (reading, field) = track.At(i, day.Value);
        return new(i, day, loaded, Rest(i, reading, field, latestDays - day.Value));
    }

    private IReadOnlyList<(double Days, SplitReading Reading)> Rest(int i, in SplitReading reading, double[] field, double most)
    {
        // A mean outside the band never comes into it by resting; a rest that cannot help is not run.
        var outside = reading.Mean > goal.BandHigh + goal.Tolerance || (goal.Goal == ChargeGoal.Even && reading.Mean < goal.BandLow - goal.Tolerance);
        var usable = reading.Core <= goal.BandHigh && goal.Goal == ChargeGoal.UsableNow;
        return most <= 0 || outside || usable ? [(0, reading)] : _rests[i].Run(field, reading.Celsius, most, Looks, now => goal.Miss(now) <= 0);
    }

    /// <summary>What holding the empty box warm costs. [J]</summary>
    private double Holding(double days)
    {
        if (days <= 0 || track.Settings.Celsius is not { } celsius) return 0;
        var flows = new BoxFlows(plan.Box, outside.Pressure);
        var around = outside.Mean(0, latestDays * 86400);
        var heat = Math.Max(0, flows.WallLoss * (celsius + Quantities.Temperature.IcePointKelvins - around.Kelvins) - plan.Box.Fan.Power);
        return days * 86400 * (heat / plan.Box.Heater.Efficiency + plan.Box.Fan.Power);
    }
}
