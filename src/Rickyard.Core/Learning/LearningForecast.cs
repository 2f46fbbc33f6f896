using Rickyard.Core.Cases;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Learning;

/// <summary>A forecast that learns from observations.</summary>
public static class LearningForecast
{
    /// <summary>Runs the case for many members, learns from the observations, and tells what is ahead.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="observations">What was observed, in any order.</param>
    /// <param name="request">Members, draws, seed, band.</param>
    /// <param name="weather">The weather of every rack period in it.</param>
    /// <param name="progress">Told the part done, 0 to 1; may be null.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static LearningRun Run(
        DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather,
        IProgress<double>? progress = null, CancellationToken cancellation = default) => throw new NotImplementedException();
}
