using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Core.Weather;
using Rickyard.Store;

namespace Rickyard.Dry;

/// <summary>Work on a case in the weather it names: reads that first, and says how long the work itself took.</summary>
internal sealed class InWeather(TimeProvider clock)
{
    /// <summary>The answer, or what kept the weather from being read or the work from being done.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="caseFolder">Folder of the case file, from which its paths are meant.</param>
    /// <param name="work">What is done in the weather.</param>
    /// <param name="timed">The answer with the seconds it took.</param>
    internal Result<T> Run<T>(
        DryingCase drying, string caseFolder, Func<IReadOnlyDictionary<WeatherName, WeatherScenario>, Result<T>> work, Func<T, double, T> timed)
        where T : class
    {
        var weather = new WeatherSource(caseFolder).ReadAll(drying);
        if (!weather.TryGet(out var scenarios)) return ResultOf.Failure<T>(weather.Problems);
        var started = clock.GetTimestamp();
        var found = work(scenarios);
        return found.TryGet(out var answer) ? ResultOf.Success(timed(answer, clock.GetElapsedTime(started).TotalSeconds)) : found;
    }
}
