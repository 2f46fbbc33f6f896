using Rickyard.Core.Drying;

namespace Rickyard.Core.Verification;

/// <summary>Reads the observable of a measured case off a run.</summary>
internal static class RunReading
{
    private const double Twenty = 0.20;

    internal static Prediction Of(MeasuredCase measured, DryingRun run) => measured.Reading switch
    {
        CaseReading.Loss => Of(run, series => 100 * On(run, series.LossFraction, measured.Day!.Value)),
        CaseReading.Mean => Of(run, series => 100 * On(run, series.Mean, measured.Day!.Value)),
        _ => Of(run, series => DaysTo(run.Days, series.Mean, Twenty)),
    };

    internal static Prediction Of(DryingRun run, Func<MoistureSeries, double> value) =>
        new(value(run.Typical), value(run.LowTenth), value(run.Median), value(run.HighTenth));

    /// <summary>First time a series is at or below a level, straight between reports; infinity if never. [d]</summary>
    internal static double DaysTo(double[] days, double[] values, double level)
    {
        var after = Array.FindIndex(values, value => value <= level);
        if (after <= 0) return after < 0 ? double.PositiveInfinity : days[0];
        var share = (values[after - 1] - level) / (values[after - 1] - values[after]);
        return days[after - 1] + share * (days[after] - days[after - 1]);
    }

    private static double On(DryingRun run, double[] values, double day) => values[Array.FindIndex(run.Days, found => found >= day - 1e-9)];
}
