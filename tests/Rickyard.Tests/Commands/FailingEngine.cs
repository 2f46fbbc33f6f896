using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Dry;

namespace Rickyard.Tests.Commands;

/// <summary>Fails in the way it is told to.</summary>
/// <param name="fail">What happens.</param>
internal sealed class FailingEngine(Func<Result<DryingRun>> fail) : IDryingEngine
{
    public Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation) => fail();
}
