using Rickyard.Core.Cases;
using Rickyard.Core.Planning;
using Rickyard.Core.Quantities;

namespace Rickyard.SplitSize;

/// <summary>Finds sizes of splits.</summary>
internal interface ISizeEngine
{
    /// <summary>The largest size that is ready by a day, or what keeps it from being found.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="request">The question.</param>
    /// <param name="caseFolder">Folder of the case file, from which its paths are meant.</param>
    /// <param name="progress">Told how much is done, 0 to 1.</param>
    /// <param name="cancellation">Stops the work.</param>
    Result<SizeAnswer> Answer(DryingCase drying, SizeRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation);

    /// <summary>The largest sizes for every month of stacking, or what keeps them from being found; parameters as above.</summary>
    Result<SizeCalendar> Calendar(DryingCase drying, SizeCalendarRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation);
}
