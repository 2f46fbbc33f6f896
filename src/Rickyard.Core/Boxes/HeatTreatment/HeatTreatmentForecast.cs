using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Splits;
using static System.FormattableString;

namespace Rickyard.Core.Boxes.HeatTreatment;

/// <summary>
/// Predicts the log that sensors in the slowest cores of a charge would write: for each class its largest piece with heat as a field, the coldest cell every
/// minute. Published heating times are met within about 10 % as a rule and a quarter at worst (docs/engine-checks.md), and wood conducts up to 20 % better or
/// worse than the formula: a forecast to plan by, no record.
/// </summary>
public static class HeatTreatmentForecast
{
    /// <summary>Time between readings. [s]</summary>
    public const double Every = 60;

    /// <summary>The largest piece of a class lies this many standard deviations of size above its typical one: one in 44. Judgement.</summary>
    private const double LargestDeviations = 2;

    /// <summary>The log of one class, from the first to the last of its air.</summary>
    /// <param name="charge">The class.</param>
    /// <param name="air">The air as it reaches the splits of the class, from the start of the box.</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    /// <param name="cancellation">Stops between two readings.</param>
    public static CoreLog Run(ChargeClass charge, AirSeries air, double pressure, CancellationToken cancellation) => Run([(charge, air)], pressure, cancellation);

    /// <summary>The log of several classes side by side, of which the coldest counts; it ends with the shortest air.</summary>
    /// <param name="classes">At least one, each with the air as it reaches it.</param>
    /// <param name="pressure">Air pressure. [Pa]</param>
    /// <param name="cancellation">Stops between two readings.</param>
    public static CoreLog Run(IReadOnlyList<(ChargeClass Class, AirSeries Air)> classes, double pressure, CancellationToken cancellation)
    {
        var readings = (int)(classes.Min(pair => pair.Air.End) / Every) + 1;
        double[] seconds = [.. Enumerable.Range(0, readings).Select(reading => reading * Every)];
        return new()
        {
            Sensors = [.. classes.Select(pair => pair.Class.Name)],
            Seconds = seconds,
            Stamps = [.. seconds.Select(Stamp)],
            Celsius = [.. classes.Select(pair => Coldest(Heated(pair.Class.Wood, pair.Air, pressure), seconds, cancellation))],
            IsPredicted = true,
        };
    }

    /// <summary>The largest piece of a class at its start.</summary>
    private static HeatedSplit Heated(DryingCase drying, AirSeries air, double pressure)
    {
        var wood = MemberWood.Of(drying, MemberDraw.Typical).Wood;
        var grid = SplitGrid.For(drying.Split.ScaledAcross(Math.Exp(LargestDeviations * drying.SizeSpread)));
        var table = MobilityTable.Of(new(drying.BasicDensity, WaterMobility.FreeWaterOf(drying.Species.Anatomy)));
        return new(grid, table, wood, air, StartField.Of(drying.Start, grid), drying.Start.Celsius, pressure);
    }

    private static double[] Coldest(HeatedSplit split, double[] seconds, CancellationToken cancellation)
    {
        var coldest = new double[seconds.Length];
        for (var reading = 0; reading < seconds.Length; reading++)
        {
            cancellation.ThrowIfCancellationRequested();
            split.AdvanceTo(seconds[reading]);
            coldest[reading] = split.Coldest;
        }

        return coldest;
    }

    private static string Stamp(double seconds)
    {
        var minutes = (int)Math.Round(seconds / 60);
        return Invariant($"day {minutes / 1440}, {minutes / 60 % 24:00}:{minutes % 60:00}");
    }
}
