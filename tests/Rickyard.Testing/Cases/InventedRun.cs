using Rickyard.Core.Cases;
using Rickyard.Core.Drying;

namespace Rickyard.Testing.Cases;

/// <summary>A run that no solver made: every part of the split falls exponentially towards one moisture, the shell faster than the core.</summary>
public static class InventedRun
{
    private const double DryMass = 2.5;

    /// <summary>The run.</summary>
    /// <param name="drying">Its case, which decides start, length and reports.</param>
    /// <param name="air">Moisture it falls towards. [kg kg⁻¹]</param>
    /// <param name="tau">Time constant of the typical core. [d]</param>
    /// <param name="low">Lower edge of the band. [kg kg⁻¹]</param>
    /// <param name="high">Upper edge of the band. [kg kg⁻¹]</param>
    public static DryingRun Of(DryingCase drying, double air, double tau, double low = 0.18, double high = 0.20)
    {
        var days = Enumerable.Range(0, (int)Math.Floor(drying.Days / drying.ReportEvery + 1e-9) + 1).Select(report => report * drying.ReportEvery).ToArray();
        var (fast, slow) = (0.8 * tau, 1.25 * tau);
        return new()
        {
            Case = drying,
            Days = days,
            Typical = Series(drying, days, air, tau),
            LowTenth = Series(drying, days, air, fast),
            Median = Series(drying, days, air, tau),
            HighTenth = Series(drying, days, air, slow),
            Window = new(low, high, Spread(drying, high), Spread(drying, low), Crossing(drying, air, slow, high) is not null ? 1 : 0.6),
            Snapshots = [],
            AirEquilibrium = [.. days.Select(_ => air)],
            SurfaceShare = [.. days.Select(day => 0.25 + 0.6 * Math.Exp(-day / tau * 2))],
            Notes = ["An invented run: no wood dried like this."],
            Members = 64,
            Seed = 1,
            ModelVersion = "invented-1",
            Seconds = 0.1,
        };

        DaySpread Spread(DryingCase of, double level) => new(Crossing(of, air, fast, level), Crossing(of, air, tau, level), Crossing(of, air, slow, level));
    }

    private static double? Crossing(DryingCase drying, double air, double tau, double level)
    {
        if (drying.Start.Core <= level) return 0;
        if (air >= level) return null;
        var day = tau * Math.Log((drying.Start.Core - air) / (level - air));
        return day <= drying.Days ? day : null;
    }

    private static MoistureSeries Series(DryingCase drying, double[] days, double air, double tau)
    {
        double[] Fall(double start, double speed) => [.. days.Select(day => air + (start - air) * Math.Exp(-day * speed / tau))];
        var mean = Fall(drying.Start.Core, 1.2);
        double[] mass = [.. mean.Select(moisture => DryMass * (1 + moisture))];
        return new(
            mean, Fall(drying.Start.Core, 1), Fall(drying.Start.Shell ?? drying.Start.Core, 2), Fall(drying.Start.End ?? drying.Start.Core, 3),
            [.. days.Select(_ => 20.0)], mass, [.. mass.Select(now => 1 - now / mass[0])]);
    }
}
