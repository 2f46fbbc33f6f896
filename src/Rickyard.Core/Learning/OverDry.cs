namespace Rickyard.Core.Learning;

/// <summary>What damp air can give back to wood that is drier than the cook likes.</summary>
/// <param name="ShareBelow">Part of the splits whose core is below the band today. 0 to 1.</param>
/// <param name="HumidityNeeded">Relative humidity at the yard's present temperature that would hold the middle of the band, 0 to 1.</param>
/// <param name="BackOn">Day on which half of the splits that are below today are back in the band; null where that does not come within the run. [d]</param>
public sealed record OverDry(double ShareBelow, double HumidityNeeded, double? BackOn);
