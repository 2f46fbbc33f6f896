using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Dry;

namespace Rickyard.Schedules;

/// <summary>Reads the weather of a case, searches its schedule, and says how long that took.</summary>
internal sealed class ScheduleEngine(TimeProvider clock) : IScheduleEngine
{
    private readonly InWeather _weather = new(clock);

    /// <inheritdoc/>
    public Result<ScheduleAnswer> Run(DryingCase drying, ScheduleRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => _weather.Run(
        drying, caseFolder, weather => ScheduleSearch.Run(drying, request, weather, progress, cancellation), (answer, seconds) => answer with { Seconds = seconds });
}
