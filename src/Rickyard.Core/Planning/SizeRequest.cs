namespace Rickyard.Core.Planning;

/// <summary>What is asked of the size of the splits.</summary>
/// <param name="NeededDays">When the wood is needed, from the start. [d]</param>
/// <param name="BandHigh">Core moisture that is dry enough: the upper edge of the cook's band. [kg kg⁻¹]</param>
/// <param name="Confidence">Part of the members whose core must have come there, 0.5 to 0.99.</param>
/// <param name="Members">Members of the ensemble; a multiple of four.</param>
/// <param name="Seed">Seed of every random draw: the same members at every size, so that a larger piece is never the luckier one.</param>
public sealed record SizeRequest(double NeededDays, double BandHigh = 0.20, double Confidence = 0.9, int Members = 32, int Seed = 1);
