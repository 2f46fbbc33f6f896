namespace Rickyard.Core.Boxes;

/// <summary>How a charge is evened out to a target: when humid air begins, how humid it is, and when it ends. Fractions, dry basis.</summary>
/// <param name="Target">What every piece is to come to. [kg kg⁻¹]</param>
/// <param name="StartWhenDriest">It begins when the driest piece is down here. [kg kg⁻¹]</param>
/// <param name="KilnEmc">Equilibrium moisture of the air meanwhile, so that the driest dry no further. [kg kg⁻¹]</param>
/// <param name="StopWhenWettest">It ends when the wettest piece is down here. [kg kg⁻¹]</param>
/// <param name="ConditioningEmc">Equilibrium moisture of the air in which the shell afterwards takes up water and loses its stress (from memory). [kg kg⁻¹]</param>
/// <param name="IsPrinted">Whether the target stands in the handbook's table; else its rule is carried beyond.</param>
public sealed record EqualizingRule(double Target, double StartWhenDriest, double KilnEmc, double StopWhenWettest, double ConditioningEmc, bool IsPrinted);
