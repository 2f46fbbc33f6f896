namespace Rickyard.Core.Measuring.Ovens;

/// <summary>What the limit of a method is a multiple of.</summary>
public enum LossLimit
{
    /// <summary>The smallest step of the balance.</summary>
    Balance,

    /// <summary>The present mass.</summary>
    Mass,

    /// <summary>All that was lost since the start.</summary>
    Loss,

    /// <summary>One gram.</summary>
    Gram,
}
