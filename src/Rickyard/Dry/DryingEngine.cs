using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Quantities;

namespace Rickyard.Dry;

/// <summary>Reads the weather of a case, runs it, and says how long that took.</summary>
internal sealed class DryingEngine(TimeProvider clock) : IDryingEngine
{
    private readonly InWeather _weather = new(clock);

    /// <inheritdoc/>
    public Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => _weather.Run(
        drying, caseFolder, weather => ResultOf.Success(DryingForecast.Run(drying, request, weather, progress, cancellation)), (run, seconds) => run with { Seconds = seconds });
}
