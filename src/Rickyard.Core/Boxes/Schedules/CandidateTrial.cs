using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>Tries all pulls and rests that branch off one track.</summary>
internal sealed class CandidateTrial(BoxPlan plan, DryingTrack track, IReadOnlyList<ChargeShape> charge, OutsideSeries outside, GoalMeasure goal, double latestDays)
{
    private const int Looks = 16;
    private readonly ClosedRest[] _rests = [.. charge.Select(shape => new ClosedRest(shape, RestCelsiusOf(track), outside.Pressure))];

    /// <summary>Every candidate of the track: all classes pulled at one mean, for each level; all pulled by their cores; and each class where it does best.</summary>
    internal IEnumerable<ScheduleCandidate> All()
    {
        var levels = PullLevels.For(goal).Select(level => (double?)level).Append(null).ToList();
        var pulls = levels.Select(level => Enumerable.Range(0, charge.Count).Select(i => Pull(i, level)).ToList()).ToList();
        for (var option = 0; option < levels.Count; option++) yield return Candidate(levels[option], pulls[option]);
        yield return Candidate(null, [.. Enumerable.Range(0, charge.Count).Select(i => pulls.Select(option => option[i]).MinBy(Demerit)!)]);
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

    private ClassPull Pull(int i, double? level)
    {
        var loaded = track.Readings[i][0].Mass;
        var day = level is { } mean ? track.DayAt(i, reading => reading.Mean, mean) : track.DayAt(i, reading => reading.Core, goal.Middle);
        if (day is null) return Late(i, track.Readings[i][^1], loaded);
        var (reading, field) = track.At(i, day.Value);
        var (rest, end) = level is null || day >= latestDays ? (0, reading) : Rest(i, reading, field, latestDays - day.Value);
        return new(i, day, rest, reading.Mean, reading.Core, reading.Shell, reading.Mass, loaded, end.Mean, end.Core, end.Shell);
    }

    private static ClassPull Late(int i, in SplitReading last, double loaded) =>
        new(i, null, 0, last.Mean, last.Core, last.Shell, last.Mass, loaded, last.Mean, last.Core, last.Shell);

    private (double Days, SplitReading End) Rest(int i, in SplitReading reading, double[] field, double most)
    {
        // A mean outside the band never comes into it by resting; a rest that cannot help is not run.
        if (reading.Mean > goal.BandHigh + goal.Tolerance || (goal.Goal == ChargeGoal.Even && reading.Mean < goal.BandLow - goal.Tolerance)) return (0, reading);
        if (reading.Core <= goal.BandHigh && goal.Goal == ChargeGoal.UsableNow) return (0, reading);
        return _rests[i].Run(field, reading.Celsius, most, Looks, now => goal.Miss(now) <= 0);
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
