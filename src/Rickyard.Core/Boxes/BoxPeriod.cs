using Rickyard.Core.Cases;

namespace Rickyard.Core.Boxes;

/// <summary>In a hot box that is reckoned with its own balances.</summary>
/// <param name="Days">How long; null for to the end of the run. [d]</param>
/// <param name="Plan">The box and its stages.</param>
public sealed record BoxPeriod(double? Days, BoxPlan Plan) : Period(Days);
