namespace Rickyard.Core.Learning.Inference;

/// <summary>Where one chain is with one piece.</summary>
/// <param name="ownNumbers">How many numbers a piece has of its own.</param>
/// <param name="unknowns">How many unknowns there are.</param>
/// <param name="outputs">How many outputs the piece needs.</param>
internal sealed class PieceState(int ownNumbers, int unknowns, int outputs)
{
    /// <summary>Standard normal numbers of its own: unknowns in which pieces differ, then its mass.</summary>
    internal double[] Own { get; } = new double[ownNumbers + 1];

    /// <summary>Numbers of all unknowns, lot's and own together.</summary>
    internal double[] Numbers { get; } = new double[unknowns];

    /// <summary>Logarithms of its outputs in middling weather.</summary>
    internal double[] Logs { get; } = new double[outputs];

    /// <summary>Log likelihood.</summary>
    internal double Likelihood { get; set; }

    /// <summary>What is its own of its mass.</summary>
    internal double Size => Own[^1];
}
