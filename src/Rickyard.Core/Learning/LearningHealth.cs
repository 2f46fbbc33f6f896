namespace Rickyard.Core.Learning;

/// <summary>How far the answer itself can be trusted.</summary>
/// <param name="EffectiveDraws">Effective number of independent draws behind the day the lot is ready (bulk; Vehtari and others 2021).</param>
/// <param name="Convergence">Largest split R-hat of the lot's unknowns; 1 is perfect, above 1.1 is told.</param>
/// <param name="StandInError">Root mean square error of the stand-in for the engine at members it had not seen, core moisture. [kg kg⁻¹]</param>
/// <param name="MonteCarloDays">Standard error of the middle ready day from the number of draws. [d]</param>
/// <param name="InsideShare">Part of the past observations that lie in the 90 % range expected without them.</param>
/// <param name="Sentences">What a person should know of it, in words; empty where all is well.</param>
public sealed record LearningHealth(
    double EffectiveDraws, double Convergence, double StandInError, double MonteCarloDays, double InsideShare, IReadOnlyList<string> Sentences);
