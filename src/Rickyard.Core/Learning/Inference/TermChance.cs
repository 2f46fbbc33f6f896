namespace Rickyard.Core.Learning.Inference;

/// <summary>How well a piece's state explains one observation.</summary>
/// <param name="LogDensity">Natural logarithm of its probability density (of its probability, where it is a bound or a sign).</param>
/// <param name="Wrong">Chance that it is a mistake.</param>
/// <param name="Expected">What was expected, before it. [as the observation]</param>
/// <param name="Spread">Standard deviation about that. [as the observation]</param>
internal readonly record struct TermChance(double LogDensity, double Wrong, double Expected, double Spread);
