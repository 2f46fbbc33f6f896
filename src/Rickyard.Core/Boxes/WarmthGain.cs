using Rickyard.Core.Air;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Core.Racks;
using Rickyard.Core.Splits;
using Rickyard.Core.Verification;
using Rickyard.Core.Wood;

namespace Rickyard.Core.Boxes;

/// <summary>
/// What warmth wins: ratios of vapour pressure beside the ratio of predicted drying times (physics.md, T5), since "seven to eighteen times faster at 70 °C than at
/// 16 to 30 °C" is the ratio of vapour pressures and no drying rate.
/// </summary>
/// <param name="From">The cooler air.</param>
/// <param name="To">The warmer air.</param>
/// <param name="KilnLaw">The ratio of times by the published law of red oak boards in kilns, target and EMC as here; null where the law has no such time.</param>
public sealed record WarmthGain(WarmthSide From, WarmthSide To, double? KilnLaw)
{
    private const double SecondsPerDay = 86400, LongestDays = 20 * 365.25, FirstLook = 600, LookGrowth = 1.01;

    /// <summary>Saturation pressures, warm over cool: the common shortcut.</summary>
    public double SaturationRatio => To.SaturationPressure / From.SaturationPressure;

    /// <summary>Differences of vapour pressure between a wet face and the air, warm over cool.</summary>
    public double DeficitRatio => To.VaporDeficit / From.VaporDeficit;

    /// <summary>Diffusivities of water in cell walls, warm over cool.</summary>
    public double BoundRatio => To.BoundDiffusivity / From.BoundDiffusivity;

    /// <summary>Diffusivities of free water, warm over cool; null without free water.</summary>
    public double? FreeRatio => From.FreeDiffusivity > 0 ? To.FreeDiffusivity / From.FreeDiffusivity : null;

    /// <summary>Times until the core is at the target, cool over warm; null where one does not get there.</summary>
    public double? CoreTimeRatio => From.DaysToCore / To.DaysToCore;

    /// <summary>Times until the mean is at the target, cool over warm; null where one does not get there.</summary>
    public double? MeanTimeRatio => From.DaysToMean / To.DaysToMean;

    /// <summary>Both airs, dried in.</summary>
    /// <param name="question">Split, airs and target.</param>
    /// <param name="cancellation">Stops the run.</param>
    public static WarmthGain Run(WarmthQuestion question, CancellationToken cancellation)
    {
        var vapor = question.FromHumidity * Saturation(question.FromCelsius);
        var warm = question.ToHumidity ?? vapor / Saturation(question.ToCelsius);
        var from = Dry(question, question.FromCelsius, question.FromHumidity, cancellation);
        var to = Dry(question, question.ToCelsius, Math.Min(1, warm), cancellation);
        return new(from, to, Law(question, from) / Law(question, to));
    }

    private static double Saturation(double celsius) => SaturationPressure.OverWater(celsius + Temperature.IcePointKelvins);

    private static WarmthSide Dry(WarmthQuestion question, double celsius, double humidity, CancellationToken cancellation)
    {
        var mobility = new WaterMobility(question.Wood.BasicDensity, WaterMobility.FreeWaterOf(question.Anatomy));
        var air = IndoorAir.Surroundings(Temperature.FromCelsius(celsius), RelativeHumidity.FromFraction(humidity), question.Split.SurfaceDiameter, Speed.FromMetresPerSecond(question.Speed));
        var grid = SplitGrid.For(question.Split);
        var solver = new SplitSolver([grid], MobilityTable.Of(mobility), [question.Wood], AirSeries.Steady(air), pressure: question.Pressure);
        solver.SetMoisture(0, [.. Enumerable.Repeat(question.StartMoisture, grid.Count)]);
        solver.SetCelsius(celsius);
        var emc = SorptionIsotherm.At(celsius).Moisture(humidity);
        var times = emc < question.Target ? Watch(solver, question, cancellation) : new(null, null, null, null);
        return new(
            celsius, humidity, Saturation(celsius), humidity * Saturation(celsius), emc, mobility.BoundAcross(question.Target, celsius), mobility.FreeAcross(question.StartMoisture, celsius),
            times.Share, times.Core, times.Mean, times.MeanThen);
    }

    /// <summary>Look ever more seldom until core and mean are there; between two looks, straight lines.</summary>
    private static Times Watch(SplitSolver solver, WarmthQuestion question, CancellationToken cancellation)
    {
        var (times, before, look) = (new Times(null, null, null, null), solver.Read(0), FirstLook);
        for (var then = 0.0; then < LongestDays * SecondsPerDay && (times.Core is null || times.Mean is null); then = solver.Time)
        {
            cancellation.ThrowIfCancellationRequested();
            solver.AdvanceTo(then + look);
            var now = solver.Read(0);
            times = times.With(question, then / SecondsPerDay, solver.Time / SecondsPerDay, before, now);
            look = Math.Max(FirstLook, (LookGrowth - 1) * solver.Time);
            before = now;
        }

        return times;
    }

    /// <summary>The kiln law's time; its moistures cannot go below the air's.</summary>
    private static double? Law(WarmthQuestion question, WarmthSide side) => side.Emc < question.Target && question.Target < question.StartMoisture
        ? RedOakDryingLaw.Days(Length.FromMetres(question.Split.Thickness).Inches, side.Celsius, question.StartMoisture, question.Target, side.Emc)
        : null;

    private sealed record Times(double? Core, double? Mean, double? MeanThen, double? Share)
    {
        internal Times With(WarmthQuestion question, double then, double now, SplitReading before, SplitReading after)
        {
            double target = question.Target, middle = (question.StartMoisture + target) / 2;
            var core = Core is null && after.Core <= target ? Part(before.Core, after.Core, target) : null;
            return new(
                Core ?? then + core * (now - then),
                Mean ?? (after.Mean <= target ? then + Part(before.Mean, after.Mean, target) * (now - then) : null),
                MeanThen ?? before.Mean + core * (after.Mean - before.Mean),
                Share ?? (after.Mean <= middle ? after.OutsideShare : null));
        }

        private static double? Part(double before, double after, double target) => before <= target ? 0 : (before - target) / (before - after);
    }
}
