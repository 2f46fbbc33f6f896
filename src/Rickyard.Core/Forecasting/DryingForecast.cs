using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Forecasting;

/// <summary>Runs a case: the typical split in usual weather, and an ensemble of members in weather as it may come, for the bands.</summary>
public static class DryingForecast
{
    private const int DefaultSnapshots = 5;

    /// <summary>Run a case.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="request">Members, seed, band and snapshot days.</param>
    /// <param name="weather">The weather of every <see cref="RackPeriod"/> in it.</param>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the run between reports.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static DryingRun Run(
        DryingCase drying, DryingRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        if (drying.Periods is [BoxPeriod]) return ChargeForecast.Run(drying, request, weather, progress, cancellation);
        var air = new CaseAir(drying, weather);
        var days = ReportDays(drying);
        SortedSet<string> notes = [];
        List<FieldSnapshot> snapshots = [];
        var (wanted, balance) = (SnapshotReports(days, request), new double[days.Length]);
        var run = new GroupRun(drying, air, days, cancellation);
        var typical = run.Run([MemberWood.Of(drying, MemberDraw.Typical)], GroupConditions.Typical, notes, (report, day, solver, grids) =>
        {
            balance[report] = Equilibrium(solver.Air);
            if (wanted.Contains(report)) snapshots.Add(new(day, grids[0], solver.MoistureOf(0)));
        })[0];
        if (balance.Length > 1) balance[0] = balance[1];
        var tracks = Members(drying, request, run, progress);
        var (low, median, high) = Bands.Of(tracks);
        return new()
        {
            Case = drying,
            Days = days,
            Typical = Bands.Series(typical),
            LowTenth = low,
            Median = median,
            HighTenth = high,
            Window = Bands.Window(days, tracks, request.BandLow, request.BandHigh),
            Snapshots = snapshots,
            AirEquilibrium = balance,
            SurfaceShare = typical.OutsideShare,
            Notes = [.. notes],
            Members = request.Members,
            Seed = request.Seed,
            ModelVersion = ModelVersion.Current,
        };
    }

    /// <summary>Times of the reports. [d]</summary>
    internal static double[] ReportDays(DryingCase drying)
    {
        var count = (int)Math.Floor(drying.Days / drying.ReportEvery + 1e-9);
        List<double> days = [.. Enumerable.Range(0, count + 1).Select(i => i * drying.ReportEvery)];
        if (drying.Days - days[^1] > 1e-9) days.Add(drying.Days);
        return [.. days];
    }

    /// <summary>Reports at which the typical split is cut open.</summary>
    internal static HashSet<int> SnapshotReports(double[] days, DryingRequest request)
    {
        var wanted = request.SnapshotDays is { Count: > 0 } chosen
            ? [0, days[^1], .. chosen]
            : Enumerable.Range(0, DefaultSnapshots).Select(i => days[^1] * i / (DefaultSnapshots - 1));
        return [.. wanted.Select(day => Nearest(days, day))];
    }

    private static int Nearest(double[] days, double day) => Enumerable.Range(0, days.Length).MinBy(i => Math.Abs(days[i] - day));

    /// <summary>Equilibrium moisture of air. [kg kg⁻¹]</summary>
    internal static double Equilibrium(in StepAir air)
    {
        var saturation = Air.SaturationPressure.Of(air.Kelvins) * air.SaturationGain;
        return saturation > 0 ? SorptionIsotherm.At(air.Kelvins - Quantities.Temperature.IcePointKelvins).Moisture(Math.Clamp(air.VaporPressure / saturation, 0, 1)) : 0;
    }

    /// <summary>The members behind the bands.</summary>
    internal static Track[] Members(DryingCase drying, DryingRequest request, GroupRun run, IProgress<double>? progress)
    {
        var members = MemberDraw.Spread(request.Members, request.Seed).Select(draw => MemberWood.Of(drying, draw)).ToArray();
        var groups = members.Chunk(LaneGrid.FullLanes).ToArray();
        var tracks = new Track[groups.Length][];
        var done = 0;
        Parallel.For(0, groups.Length, new ParallelOptions { CancellationToken = run.Cancellation }, group =>
        {
            tracks[group] = run.Run(groups[group], GroupConditions.Of(group, request.Seed), new HashSet<string>());
            progress?.Report(Interlocked.Increment(ref done) / (double)groups.Length);
        });
        return [.. tracks.SelectMany(track => track)];
    }
}
