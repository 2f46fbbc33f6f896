namespace Rickyard.Testing.Learning;

/// <summary>Draws of what a lot may be.</summary>
/// <param name="Unknowns">Standard normal numbers, by draw and unknown.</param>
/// <param name="Meter">Of the meter's error.</param>
/// <param name="MiddleCore">Core of the middle split, by draw and report. [kg kg⁻¹]</param>
/// <param name="OtherCore">Core of any other split. [kg kg⁻¹]</param>
public sealed record LearntLot(double[][] Unknowns, double[] Meter, double[][] MiddleCore, double[][] OtherCore);
