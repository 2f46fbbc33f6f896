using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;
using Rickyard.Store;

namespace Rickyard.Dry;

/// <summary>Reads the weather of a case, runs it, and says how long that took.</summary>
internal sealed class DryingEngine(TimeProvider clock) : IDryingEngine
{
    /// <inheritdoc/>
    public Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        var weather = new WeatherSource(caseFolder).ReadAll(drying);
        if (!weather.TryGet(out var scenarios)) return ResultOf.Failure<DryingRun>(weather.Problems);
        var started = clock.GetTimestamp();
        var run = DryingForecast.Run(drying, request, scenarios, progress, cancellation);
        return ResultOf.Success(run with { Seconds = clock.GetElapsedTime(started).TotalSeconds });
    }
}
