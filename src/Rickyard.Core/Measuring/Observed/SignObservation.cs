namespace Rickyard.Core.Measuring.Observed;

/// <summary>A sign without a number: heft, checks, loose bark, water bubbling from the ends in a fire.</summary>
/// <param name="From">When and on what.</param>
/// <param name="Sign">Which.</param>
/// <param name="Seen">Whether it was there.</param>
public sealed record SignObservation(Origin From, WoodSign Sign, bool Seen) : Observation(From);
