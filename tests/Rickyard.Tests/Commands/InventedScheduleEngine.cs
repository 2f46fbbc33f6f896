using Rickyard.Core.Boxes.Schedules;
using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Schedules;
using Rickyard.Testing.Boxes;

namespace Rickyard.Tests.Commands;

/// <summary>Answers every charge with an invented schedule, and remembers what it was asked.</summary>
/// <param name="meets">Whether it can be done.</param>
/// <param name="isStopped">Whether it says it was stopped.</param>
internal sealed class InventedScheduleEngine(bool meets = true, bool isStopped = false) : IScheduleEngine
{
    public ScheduleRequest? Asked { get; private set; }

    public Result<ScheduleAnswer> Run(DryingCase drying, ScheduleRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        Asked = request;
        progress?.Report(0.5);
        var answer = InventedSchedule.Of(request, meets);
        return ResultOf.Success(answer with { Case = answer.Case with { SourceText = drying.SourceText }, WasStopped = isStopped });
    }
}
