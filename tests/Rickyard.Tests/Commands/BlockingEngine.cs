using Rickyard.Core.Cases;
using Rickyard.Core.Drying;
using Rickyard.Core.Quantities;
using Rickyard.Dry;

namespace Rickyard.Tests.Commands;

/// <summary>Puts a folder where a file was to be written, while it works.</summary>
/// <param name="path">Where.</param>
internal sealed class BlockingEngine(string path) : IDryingEngine
{
    public Result<DryingRun> Run(DryingCase drying, DryingRequest request, string caseFolder, IProgress<double>? progress, CancellationToken cancellation)
    {
        Directory.CreateDirectory(path);
        return new InventedEngine().Run(drying, request, caseFolder, progress, cancellation);
    }
}
