using Rickyard.Core.Cases;
using Rickyard.Core.Learning;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Quantities;
using Rickyard.Dry;

namespace Rickyard.Learn;

/// <summary>Reads the weather of a case, learns from its observations, and says how long that took.</summary>
internal sealed class LearningEngine(TimeProvider clock) : ILearningEngine
{
    private readonly InWeather _weather = new(clock);

    /// <inheritdoc/>
    public Result<LearningRun> Run(
        DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => _weather.Run(
        drying, caseFolder, weather => ResultOf.Success(LearningForecast.Run(drying, observations, request, weather, progress, cancellation)), (run, seconds) => run with { Seconds = seconds });
}
