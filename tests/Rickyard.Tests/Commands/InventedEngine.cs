using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Dry;
using Rickyard.Testing.Cases;

namespace Rickyard.Tests.Commands;

/// <summary>Answers every case with an invented run, and remembers what it was asked.</summary>
internal sealed class InventedEngine : IDryingEngine
{
    public DryingRequest? Asked { get; private set; }

    public string? Folder { get; private set; }

    public Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        (Asked, Folder) = (request, caseFolder);
        progress?.Report(0.5);
        return ResultOf.Success(InventedRun.Of(drying, air: 0.08, tau: 12, request.BandLow, request.BandHigh));
    }
}
