using Rickyard.Core.Drying;

namespace Rickyard.Core.Boxes.Schedules;

/// <summary>A charge dried in one setting to the latest day, with every class's readings and moisture fields along the way: where pulls branch off.</summary>
/// <param name="Settings">The setting.</param>
/// <param name="Days">Times. [d]</param>
/// <param name="Readings">By class and time.</param>
/// <param name="Fields">Moisture of every cell, by class and time. [kg kg⁻¹]</param>
/// <param name="Series">The box.</param>
internal sealed record DryingTrack(BoxSettings Settings, double[] Days, SplitReading[][] Readings, double[][][] Fields, BoxSeries Series)
{
    /// <summary>Readings taken over the time there is.</summary>
    private const int Times = 56;

    /// <summary>Run it.</summary>
    internal static DryingTrack Of(BoxPlan plan, BoxSettings settings, IReadOnlyList<ChargeShape> charge, OutsideSeries outside, double days, CancellationToken cancellation)
    {
        double[] times = [.. Enumerable.Range(0, Times + 1).Select(i => days * i / Times)];
        var readings = charge.Select(_ => new SplitReading[times.Length]).ToArray();
        var fields = charge.Select(_ => new double[times.Length][]).ToArray();
        var run = new BoxRun(plan with { Stages = [settings.Drying(plan.Box, null)] }, charge, outside, times, StepControl.Forecast)
        {
            Watch = (report, bodies) =>
            {
                for (var i = 0; i < bodies.Count; i++) (readings[i][report], fields[i][report]) = (bodies[i].Read(), bodies[i].Moisture.ToArray());
            },
        };
        return new(settings, times, readings, fields, run.Run(new HashSet<int>(), cancellation).Series);
    }

    /// <summary>When a falling reading of a class first comes down to a level, between times; null if not in time. [d]</summary>
    internal double? DayAt(int charged, Func<SplitReading, double> value, double level)
    {
        var readings = Readings[charged];
        if (value(readings[0]) <= level) return 0;
        for (var i = 1; i < Days.Length; i++)
        {
            var (before, now) = (value(readings[i - 1]), value(readings[i]));
            if (now <= level) return Days[i - 1] + (Days[i] - Days[i - 1]) * (before - level) / (before - now);
        }

        return null;
    }

    /// <summary>Readings and field of a class at a day, straight between times.</summary>
    internal (SplitReading Reading, double[] Field) At(int charged, double day)
    {
        var (after, share) = PlaceOf(day);
        double Of(double a, double b) => a + share * (b - a);
        SplitReading x = Readings[charged][after - 1], y = Readings[charged][after];
        double[] first = Fields[charged][after - 1], second = Fields[charged][after];
        return (
            new(Of(x.Mean, y.Mean), Of(x.Core, y.Core), Of(x.Shell, y.Shell), Of(x.End, y.End), Of(x.Celsius, y.Celsius), Of(x.Mass, y.Mass), 0),
            [.. first.Zip(second, Of)]);
    }

    /// <summary>Energy bought by a day. [J]</summary>
    internal double EnergyAt(double day)
    {
        var (after, share) = PlaceOf(day);
        return Series.EnergyJoules[after - 1] + share * (Series.EnergyJoules[after] - Series.EnergyJoules[after - 1]);
    }

    /// <summary>The first time not before a day, and how far the day lies from the time before it to that.</summary>
    private (int After, double Share) PlaceOf(double day)
    {
        var after = Math.Clamp(Array.FindIndex(Days, d => d >= day), 1, Days.Length - 1);
        return (after, (day - Days[after - 1]) / (Days[after] - Days[after - 1]));
    }
}
