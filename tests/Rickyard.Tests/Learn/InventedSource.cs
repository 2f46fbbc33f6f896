using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;
using Rickyard.Learn;
using Rickyard.Testing.Learning;

namespace Rickyard.Tests.Learn;

/// <summary>Finds the same observations whatever the table.</summary>
internal sealed class InventedSource : IObservationSource
{
    public Result<FoundObservations> Found { get; init; } = ResultOf.Success(new FoundObservations([.. SampleObservations.Ten.Select(fit => fit.Observation)], [], []));

    public string? Asked { get; private set; }

    public Result<FoundObservations> Read(DryingCase drying, string? path)
    {
        Asked = path;
        return Found;
    }
}
