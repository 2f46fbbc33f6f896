using NodaTime;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Planning;

/// <summary>
/// Fills a <see cref="SizeCalendar"/>: for each month of stacking the sizes are halved between, for all spans at once; one run of a size tells for each span on which side
/// of it the answer lies. Months are worked on side by side.
/// </summary>
public sealed class SizeCalendarSearch
{
    private const int Months = 12;

    private readonly ReadinessOnRack _readiness;
    private readonly double[] _spans;
    private readonly double?[] _widths;

    private SizeCalendarSearch(DryingCase drying, SizeCalendarRequest request, ReadinessOnRack readiness)
    {
        _readiness = readiness;
        _spans = [.. request.Spans.Select(months => (double)NodaTime.Period.DaysBetween(drying.StartDate, drying.StartDate.PlusMonths(months)))];
        _widths = new double?[_spans.Length];
    }

    /// <summary>Search, or say what keeps the chart from being made.</summary>
    /// <param name="drying">The case: a rack outdoors.</param>
    /// <param name="request">Band, confidence, spans.</param>
    /// <param name="weather">The weather of the rack.</param>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static Result<SizeCalendar> Run(
        DryingCase drying, SizeCalendarRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        Problem[] problems = [.. SizeProblems.Of(drying, request)];
        if (problems.Length > 0) return ResultOf.Failure<SizeCalendar>(problems);
        var starts = Starts(drying.StartDate);
        var widths = Widths(starts, start => Month(drying with { Start = drying.Start with { At = start } }, request, weather, cancellation), progress, cancellation);
        return ResultOf.Success(new SizeCalendar { Case = drying, Request = request, Starts = starts, Widths = widths, ModelVersion = ModelVersion.Current });
    }

    /// <summary>The first of the case's own month and of the eleven after it, put in the order of the year.</summary>
    private static LocalDate[] Starts(LocalDate day) =>
        [.. Enumerable.Range(0, Months).Select(month => new LocalDate(day.Year, day.Month, 1).PlusMonths(month)).OrderBy(start => start.Month)];

    private static double?[][] Widths(LocalDate[] starts, Func<LocalDate, double?[]> month, IProgress<double>? progress, CancellationToken cancellation)
    {
        var widths = new double?[starts.Length][];
        var done = 0;
        Parallel.For(0, starts.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            widths[i] = month(starts[i]);
            progress?.Report(Interlocked.Increment(ref done) / (double)starts.Length);
        });
        return widths;
    }

    private static double?[] Month(DryingCase drying, SizeCalendarRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather, CancellationToken cancellation)
    {
        var search = new SizeCalendarSearch(drying, request, new(drying, request, weather, cancellation));
        search.Fill(-1, SizeSteps.Coarse.Count, [.. Enumerable.Range(0, search._spans.Length)]);
        return search._widths;
    }

    /// <summary>Between a size that passes all these spans (or -1) and one that fails all of them.</summary>
    private void Fill(int passing, int failing, int[] spans)
    {
        if (spans.Length == 0) return;
        if (failing - passing == 1)
        {
            foreach (var span in spans) _widths[span] = passing < 0 ? null : SizeSteps.Coarse[passing];
            return;
        }

        var middle = (passing + failing) / 2;
        var ready = _readiness.Day(SizeSteps.Coarse[middle], spans.Max(span => _spans[span]));
        Fill(middle, failing, [.. spans.Where(span => _spans[span] >= ready)]);
        Fill(passing, middle, [.. spans.Where(span => _spans[span] < ready)]);
    }
}
