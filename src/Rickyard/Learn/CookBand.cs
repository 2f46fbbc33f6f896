namespace Rickyard.Learn;

/// <summary>The cook's band, as they said it and as moisture of this wood.</summary>
/// <param name="Low">Lower edge in this wood. [kg kg⁻¹]</param>
/// <param name="High">Upper edge in this wood. [kg kg⁻¹]</param>
/// <param name="Scale">The meter scale it was said on, or null where moisture of the wood itself was meant.</param>
/// <param name="ShownLow">Lower edge as it was said. [kg kg⁻¹]</param>
/// <param name="ShownHigh">Upper edge as it was said. [kg kg⁻¹]</param>
internal sealed record CookBand(double Low, double High, string? Scale, double ShownLow, double ShownHigh);
