namespace Rickyard.Testing.Learning;

/// <summary>How far forecasts of lots unlike their prior are off.</summary>
/// <param name="Looks">Looks known.</param>
/// <param name="Error">Mean distance of the middle forecast from the truth. [kg kg⁻¹]</param>
/// <param name="Inside">Truths inside the 90 % band.</param>
/// <param name="Lots">Lots.</param>
public sealed record WrongPriorScore(int Looks, double Error, int Inside, int Lots);
