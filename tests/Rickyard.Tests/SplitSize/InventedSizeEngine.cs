using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;
using Rickyard.SplitSize;
using Rickyard.Testing.Planning;

namespace Rickyard.Tests.SplitSize;

/// <summary>Answers every question about sizes with invented ones, once it has been asked rightly, and remembers what it was asked.</summary>
internal sealed class InventedSizeEngine : ISizeEngine
{
    public SizeRequest? Asked { get; private set; }

    public SizeCalendarRequest? Charted { get; private set; }

    public Result<SizeAnswer> Answer(DryingCase drying, SizeRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        Asked = request;
        return request.NeededDays > 0 ? ResultOf.Success(InventedSizes.Answer(drying, request)) : ResultOf.Failure<SizeAnswer>("needed by", "It is too soon.", "Give a later day.");
    }

    public Result<SizeCalendar> Calendar(DryingCase drying, SizeCalendarRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        Charted = request;
        return ResultOf.Success(InventedSizes.Calendar(drying, request));
    }
}
