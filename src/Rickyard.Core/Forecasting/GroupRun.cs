using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Period = Rickyard.Core.Cases.Period;

namespace Rickyard.Core.Forecasting;

/// <summary>Runs one group of members (one, or four side by side) through all periods of a case and fills their tracks.</summary>
internal sealed class GroupRun(DryingCase drying, CaseAir air, double[] days, CancellationToken cancellation)
{
    private const double SecondsPerDay = NodaConstants.SecondsPerDay;

    /// <summary>Stops its runs between reports.</summary>
    internal CancellationToken Cancellation => cancellation;

    /// <summary>Run the group.</summary>
    /// <param name="members">One or four.</param>
    /// <param name="conditions">Weather and rack of the group.</param>
    /// <param name="notes">Notes of the weather, added to.</param>
    /// <param name="look">Called for every report with the solver and the members' grids; may be null.</param>
    /// <param name="enough">Asked after every report whether the group may end there, later reports being left empty; may be null.</param>
    internal Track[] Run(
        IReadOnlyList<MemberWood> members, GroupConditions conditions, ISet<string> notes, Action<int, double, SplitSolver, SplitGrid[]>? look = null, Func<Track[], int, bool>? enough = null)
    {
        var tracks = members.Select(_ => new Track(days.Length)).ToArray();
        var grids = members.Select(member => SplitGrid.For(member.Split)).ToArray();
        var fields = members.Select((member, lane) => Scaled(StartField.Of(drying.Start, grids[lane]), member.StartFactor)).ToArray();
        var greenMass = members.Select((member, lane) => GreenMass(member, grids[lane], fields[lane])).ToArray();
        var (celsius, day, report, pieces) = (drying.Start.Celsius, 0.0, 0, 1);
        foreach (var stretch in Stretches())
        {
            if (stretch.SplitInto > 1)
            {
                (grids, fields) = FurtherSplit.Apply(grids, fields, stretch.SplitInto);
                pieces *= stretch.SplitInto;
            }

            var end = stretch.IsLast ? days[^1] : Math.Min(days[^1], day + stretch.Days);
            var solver = Solver(members, grids, fields, celsius, air.Of(stretch.Periods, day, Math.Max(end - day, 1.0 / 24), grids[0].Split, conditions, notes));
            for (; report < days.Length && (days[report] <= end || stretch.IsLast); report++)
            {
                cancellation.ThrowIfCancellationRequested();
                solver.AdvanceTo((days[report] - day) * SecondsPerDay);
                for (var lane = 0; lane < members.Count; lane++) Record(tracks[lane], report, solver, lane, pieces, greenMass[lane]);
                look?.Invoke(report, days[report], solver, grids);
                if (enough?.Invoke(tracks, report) == true) return tracks;
            }

            solver.AdvanceTo((end - day) * SecondsPerDay);
            fields = [.. Enumerable.Range(0, members.Count).Select(solver.MoistureOf)];
            (celsius, day) = (solver.Read(0).Celsius, end);
        }

        return tracks;
    }

    private static SplitSolver Solver(IReadOnlyList<MemberWood> members, SplitGrid[] grids, double[][] fields, double celsius, AirSeries series, MobilityTable table, double pressure)
    {
        var solver = new SplitSolver(grids, table, [.. members.Select(member => member.Wood)], series, pressure: pressure);
        for (var lane = 0; lane < fields.Length; lane++) solver.SetMoisture(lane, fields[lane]);
        solver.SetCelsius(celsius);
        return solver;
    }

    private SplitSolver Solver(IReadOnlyList<MemberWood> members, SplitGrid[] grids, double[][] fields, double celsius, AirSeries series) => Solver(
        members, grids, fields, celsius, series,
        MobilityTable.Of(new(drying.BasicDensity, WaterMobility.FreeWaterOf(drying.Species.Anatomy))), air.Pressure());

    private static double[] Scaled(double[] field, double factor) => [.. field.Select(value => value * factor)];

    private static double GreenMass(MemberWood member, SplitGrid grid, double[] field)
    {
        var water = field.Zip(grid.Volumes, (moisture, volume) => moisture * volume).Sum() / grid.Volumes.Sum();
        return grid.Split.Volume * member.Wood.BasicDensity * (1 + water);
    }

    private static void Record(Track track, int report, SplitSolver solver, int lane, int pieces, double greenMass)
    {
        var reading = solver.Read(lane);
        track.Set(report, reading, 1 - reading.Mass * pieces / greenMass);
    }

    /// <summary>The periods between further splits.</summary>
    private List<Stretch> Stretches()
    {
        List<Stretch> stretches = [];
        List<Period> periods = [];
        var into = 1;
        foreach (var period in drying.Periods)
        {
            if (period is not SplitAgainPeriod again)
            {
                periods.Add(period);
                continue;
            }

            if (periods.Count > 0) stretches.Add(new(into, periods, false));
            (into, periods) = (periods.Count > 0 ? again.Into : into * again.Into, []);
        }

        stretches.Add(new(into, periods.Count > 0 ? periods : [drying.Periods.Last(p => p is not SplitAgainPeriod)], true));
        return stretches;
    }

    private sealed record Stretch(int SplitInto, IReadOnlyList<Period> Periods, bool IsLast)
    {
        internal double Days => Periods.Sum(period => period.Days ?? double.PositiveInfinity);
    }
}
