using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Testing.Learning;

/// <summary>A lot of which all is known.</summary>
/// <param name="Unknowns">Standard normal numbers of its unknowns.</param>
/// <param name="Meter">Standard normal number of the meter's error.</param>
/// <param name="MiddleCore">Core of its middle split. [kg kg⁻¹]</param>
/// <param name="OtherCore">Core of a split that nobody looks at. [kg kg⁻¹]</param>
/// <param name="Days">Report times. [d]</param>
/// <param name="Looks">What was seen of it.</param>
public sealed record SyntheticLot(double[] Unknowns, double Meter, double[] MiddleCore, double[] OtherCore, double[] Days, IReadOnlyList<Observation> Looks);
