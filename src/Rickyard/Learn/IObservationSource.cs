using Rickyard.Core.Cases;
using Rickyard.Core.Quantities;

namespace Rickyard.Learn;

/// <summary>Where the observations of a case come from: a table beside it and its own readings.</summary>
internal interface IObservationSource
{
    /// <summary>Everything observed, kept and left out; or what keeps the whole table from being read.</summary>
    /// <param name="drying">The case.</param>
    /// <param name="path">The table, or null for the case's own readings alone.</param>
    Result<FoundObservations> Read(DryingCase drying, string? path);
}
