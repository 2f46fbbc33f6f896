namespace Rickyard.Core.Drying;

/// <summary>A time with its spread; null where that part of the members does not get there within the run.</summary>
/// <param name="Early">A tenth of the members are there by then. [d]</param>
/// <param name="Middle">Half. [d]</param>
/// <param name="Late">Nine tenths. [d]</param>
public sealed record DaySpread(double? Early, double? Middle, double? Late);
