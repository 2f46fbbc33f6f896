namespace Rickyard.Core.Splits;

/// <summary>What covers a face of a split, and so how easily water leaves through it.</summary>
public enum FaceKind
{
    /// <summary>Bark: nearly closed to vapour.</summary>
    Bark,

    /// <summary>Bare wood across the grain.</summary>
    Side,

    /// <summary>Bare end grain.</summary>
    End,
}
