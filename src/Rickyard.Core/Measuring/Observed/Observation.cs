namespace Rickyard.Core.Measuring.Observed;

/// <summary>Something seen, weighed or measured on a lot; the forecast learns from these.</summary>
/// <param name="From">When and on what.</param>
public abstract record Observation(Origin From);
