using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.Store;

namespace Rickyard.SplitSize;

/// <summary>Reads the weather of a case, searches, and says how long that took.</summary>
internal sealed class SizeEngine(TimeProvider clock) : ISizeEngine
{
    /// <inheritdoc/>
    public Result<SizeAnswer> Answer(DryingCase drying, SizeRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        var weather = new WeatherSource(caseFolder).ReadAll(drying);
        if (!weather.TryGet(out var scenarios)) return ResultOf.Failure<SizeAnswer>(weather.Problems);
        var started = clock.GetTimestamp();
        var found = SizeSearch.Run(drying, request, scenarios, progress, cancellation);
        return found.TryGet(out var answer) ? ResultOf.Success(answer with { Seconds = clock.GetElapsedTime(started).TotalSeconds }) : found;
    }

    /// <inheritdoc/>
    public Result<SizeCalendar> Calendar(DryingCase drying, SizeCalendarRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        var weather = new WeatherSource(caseFolder).ReadAll(drying);
        if (!weather.TryGet(out var scenarios)) return ResultOf.Failure<SizeCalendar>(weather.Problems);
        var started = clock.GetTimestamp();
        var found = SizeCalendarSearch.Run(drying, request, scenarios, progress, cancellation);
        return found.TryGet(out var calendar) ? ResultOf.Success(calendar with { Seconds = clock.GetElapsedTime(started).TotalSeconds }) : found;
    }
}
