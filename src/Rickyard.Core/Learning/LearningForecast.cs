using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Learning;

/// <summary>
/// A forecast that learns from observations: the engine is run for members spread over all that the case leaves open, a stand-in is fitted to their answers, the observations
/// are weighed against it, and draws of what the lot may be are carried forward (physics.md, section L).
/// </summary>
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
        IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        if (drying.Periods is [BoxPeriod]) return ChargeLearning.Run(drying, observations, request, weather, progress, cancellation);
        var lesson = new Lesson(LearningCase.Of(drying, observations), observations, request);
        return lesson.Learn(new CaseAir(lesson.Case, weather), progress, cancellation).Tell();
    }
}
