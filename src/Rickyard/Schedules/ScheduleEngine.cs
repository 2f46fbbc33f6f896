using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Store;

namespace Rickyard.Schedules;

/// <summary>Reads the weather of a case, searches its schedule, and says how long that took.</summary>
internal sealed class ScheduleEngine(TimeProvider clock) : IScheduleEngine
{
    /// <inheritdoc/>
    public Result<ScheduleAnswer> Run(DryingCase drying, ScheduleRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        var weather = new WeatherSource(caseFolder).ReadAll(drying);
        if (!weather.TryGet(out var scenarios)) return ResultOf.Failure<ScheduleAnswer>(weather.Problems);
        var started = clock.GetTimestamp();
        var found = ScheduleSearch.Run(drying, request, scenarios, progress, cancellation);
        return found.TryGet(out var answer) ? ResultOf.Success(answer with { Seconds = clock.GetElapsedTime(started).TotalSeconds }) : found;
    }
}
