namespace Rickyard.Core.Learning;

/// <summary>How a lot's readings are to be learnt from.</summary>
/// <param name="Members">Runs of the engine behind the answer; a multiple of four.</param>
/// <param name="Draws">Draws of the posterior kept for the bands.</param>
/// <param name="Seed">Seed of every random draw.</param>
/// <param name="BandLow">Lower edge of the cook's band, as moisture of this wood. [kg kg⁻¹]</param>
/// <param name="BandHigh">Upper edge. [kg kg⁻¹]</param>
/// <param name="Today">Day the forecast starts from; null for that of the last observation. [d]</param>
public sealed record LearningRequest(int Members = 128, int Draws = 1000, int Seed = 1, double BandLow = 0.18, double BandHigh = 0.20, double? Today = null);
