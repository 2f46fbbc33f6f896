using static System.FormattableString;

namespace Rickyard.Core.Drying;

/// <summary>A run that cannot go on: even the shortest step allowed gives no possible state. A fault of the program, not of what was asked.</summary>
/// <param name="step">The step tried. [s]</param>
/// <param name="error">Its error over what is allowed.</param>
public sealed class SolverStuckException(double step, double error) : Exception(Invariant($"The solver cannot go on: a step of {step:0.###e0} s still has {error:0.##} times the error allowed."))
{
    /// <summary>The step tried. [s]</summary>
    public double Step { get; } = step;

    /// <summary>Its error over what is allowed; not a number where the state became impossible.</summary>
    public double Error { get; } = error;
}
