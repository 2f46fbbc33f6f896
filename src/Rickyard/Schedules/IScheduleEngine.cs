using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Schedules;

/// <summary>Finds the schedule of a charge.</summary>
internal interface IScheduleEngine
{
    /// <summary>The schedule, or what kept it from being searched.</summary>
    /// <param name="drying">A case with a hot box.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="caseFolder">Folder of the case file, from which its paths are meant.</param>
    /// <param name="progress">Told how much is done, 0 to 1.</param>
    /// <param name="cancellation">Stops the search; the best so far is then the answer.</param>
    /// <exception cref="OperationCanceledException">Stopped before anything had been tried.</exception>
    Result<ScheduleAnswer> Run(DryingCase drying, ScheduleRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation);
}
