namespace Rickyard.Core.Planning;

/// <summary>What a chart of the months is to show.</summary>
/// <param name="BandHigh">Core moisture that is dry enough: the upper edge of the cook's band. [kg kg⁻¹]</param>
/// <param name="Confidence">Part of the members whose core must have come there, 0.5 to 0.99.</param>
/// <param name="Members">Members of the ensemble; a multiple of four.</param>
/// <param name="Seed">Seed of every random draw.</param>
public sealed record SizeCalendarRequest(double BandHigh = 0.20, double Confidence = 0.9, int Members = 32, int Seed = 1)
{
    /// <summary>Months from stacking until the wood is needed, rising.</summary>
    public IReadOnlyList<int> Spans { get; init; } = [3, 6, 9, 12, 18, 24];
}
