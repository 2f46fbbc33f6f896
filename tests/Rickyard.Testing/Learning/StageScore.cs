namespace Rickyard.Testing.Learning;

/// <summary>Marks of forecasts after so many looks.</summary>
/// <param name="Looks">Looks known.</param>
/// <param name="Inside">Truths inside the 90 % band of an unseen split's core at the end.</param>
/// <param name="Lots">Lots.</param>
/// <param name="UnseenScore">Mean CRPS of that core. [kg kg⁻¹]</param>
/// <param name="MiddleScore">Mean CRPS of the middle split's core at the end. [kg kg⁻¹]</param>
public sealed record StageScore(int Looks, int Inside, int Lots, double UnseenScore, double MiddleScore);
