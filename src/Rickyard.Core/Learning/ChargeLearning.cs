using Rickyard.Core.Boxes;
using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Forecasting;
using Rickyard.Core.Measuring.Observed;
using Rickyard.Core.Splits;
using Rickyard.Core.Weather;

namespace Rickyard.Core.Learning;

/// <summary>
/// Learning of a charge in a hot box: the box is run once with the typical split of every class, and each class then learns by itself in the air that it met there. What the wood
/// of a whole charge does to the box's air beyond that is not followed (as in the plain forecast of a charge).
/// </summary>
internal static class ChargeLearning
{
    /// <summary>Learn; the run's own figures are those of the first class.</summary>
    internal static LearningRun Run(
        DryingCase drying, IReadOnlyList<Observation> observations, LearningRequest request, IReadOnlyDictionary<WeatherName, WeatherScenario> weather,
        IProgress<double>? progress, CancellationToken cancellation)
    {
        var plan = ((BoxPeriod)drying.Periods[0]).Plan;
        var charge = ChargeForecast.ClassesOf(drying);
        SortedSet<string> notes = [];
        var outside = ChargeForecast.OutsideOf(drying, plan, weather, notes);
        var trace = new BoxRun(plan, charge, outside, DryingForecast.ReportDays(drying), GridResolution.Default, StepControl.Forecast).Run(new HashSet<int>(), cancellation);
        var today = request with { Today = request.Today ?? observations.Select(one => one.From.Day).DefaultIfEmpty(0).Max() };
        List<ClassLearning> classes = [];
        foreach (var (one, i) in charge.Select((one, i) => (one, i)))
        {
            var own = charge.Count == 1 ? observations : [.. observations.Where(observation => observation.From.Class == one.Name)];
            var lesson = new Lesson(LearningCase.Of(one.Wood with { Pieces = one.Pieces }, own), own, today);
            var air = new CaseAir(lesson.Case, weather, new(trace.Air[i], outside.Pressure));
            classes.Add(new(one.Name, lesson.Learn(air, PartOfProgress.Of(progress, i, charge.Count), cancellation).Tell()));
        }

        return classes[0].Run with { Case = drying, Classes = charge.Count > 1 ? classes : [], Notes = [.. notes] };
    }
}
