using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;

namespace Rickyard.Dry;

/// <summary>Solves a case.</summary>
internal interface IDryingEngine
{
    /// <summary>The answer to a case, or what kept it from being solved, such as weather that cannot be read.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="request">Band, members, seed.</param>
    /// <param name="caseFolder">Folder of the case file, from which its paths are meant.</param>
    /// <param name="progress">Told how much is done, 0 to 1.</param>
    /// <param name="cancellation">Stops the work.</param>
    Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation);
}
