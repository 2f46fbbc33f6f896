using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Schedules;

namespace Rickyard.Tests.Commands;

/// <summary>Fails in the way it is told to.</summary>
/// <param name="fail">What happens.</param>
internal sealed class FailingScheduleEngine(Func<Result<ScheduleAnswer>> fail) : IScheduleEngine
{
    public Result<ScheduleAnswer> Run(DryingCase drying, ScheduleRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => fail();
}
