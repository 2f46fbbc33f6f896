using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Verification;

/// <summary>The typical split of a case alone, without an ensemble: for the many small comparisons that need no band.</summary>
/// <param name="Days">Report times. [d]</param>
/// <param name="Series">What it read then.</param>
internal sealed record TypicalRun(double[] Days, MoistureSeries Series)
{
    internal static TypicalRun Of(DryingCase drying, CancellationToken cancellation)
    {
        var weather = drying.Periods.OfType<RackPeriod>().Select(rack => rack.Weather).Distinct()
            .ToDictionary(name => name, name => WeatherScenario.FromNormals(NormalsCatalogue.Find(name.NormalsPlace!).Value!));
        double[] days = [.. Enumerable.Range(0, (int)Math.Round(drying.Days / drying.ReportEvery) + 1).Select(report => report * drying.ReportEvery)];
        var run = new GroupRun(drying, new(drying, weather), days, cancellation);
        var track = run.Run([MemberWood.Of(drying, MemberDraw.Typical)], GroupConditions.Typical, new HashSet<string>())[0];
        return new(days, Bands.Series(track));
    }

    /// <summary>Days until the mean is at or below a level; infinity if never.</summary>
    internal double DaysTo(double level) => RunReading.DaysTo(Days, Series.Mean, level);
}
