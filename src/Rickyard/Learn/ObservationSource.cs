using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Learn;

/// <summary>Reads the table of readings from its file and the readings of the case itself.</summary>
internal sealed class ObservationSource : IObservationSource
{
    /// <inheritdoc/>
    public Result<FoundObservations> Read(DryingCase drying, string? path) => throw new NotImplementedException();
}
