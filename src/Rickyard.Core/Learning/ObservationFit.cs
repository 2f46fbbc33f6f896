using Rickyard.Core.Measuring.Observed;

namespace Rickyard.Core.Learning;

/// <summary>One observation beside what the forecast, having learnt from all of them, would expect it to be.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="Value">What was observed, in <paramref name="Unit"/>; null for a sign. </param>
/// <param name="Expected">90 % range and middle of what such an observation would show, its own error included, without having seen this one. [as the unit]</param>
/// <param name="Unit">"% dry basis" or "kg".</param>
/// <param name="ChanceWrong">Chance that it is a mistake: wrong piece, wrong line, pins in a wet skin. 0 to 1.</param>
public sealed record ObservationFit(Observation Observation, double? Value, Spread Expected, string Unit, double ChanceWrong)
{
    /// <summary>Above this an observation is told to be one that can hardly be right.</summary>
    public const double SuspectChance = 0.5;

    /// <summary>Whether it can hardly be right.</summary>
    public bool IsSuspect => ChanceWrong > SuspectChance;
}
