using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.Dry;

namespace Rickyard.SplitSize;

/// <summary>Reads the weather of a case, searches, and says how long that took.</summary>
internal sealed class SizeEngine(TimeProvider clock) : ISizeEngine
{
    private readonly InWeather _weather = new(clock);

    /// <inheritdoc/>
    public Result<SizeAnswer> Answer(DryingCase drying, SizeRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => _weather.Run(
        drying, caseFolder, weather => SizeSearch.Run(drying, request, weather, progress, cancellation), (answer, seconds) => answer with { Seconds = seconds });

    /// <inheritdoc/>
    public Result<SizeCalendar> Calendar(DryingCase drying, SizeCalendarRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => _weather.Run(
        drying, caseFolder, weather => SizeCalendarSearch.Run(drying, request, weather, progress, cancellation), (calendar, seconds) => calendar with { Seconds = seconds });
}
