namespace Rickyard.Core.Splits;

/// <summary>A point inside a cell, standing for a small volume.</summary>
/// <param name="Cell">Its cell.</param>
/// <param name="Volume">What it stands for. [m³]</param>
/// <param name="ToSide">Distance to the nearest bare face across the grain (in a round, to the bark). [m]</param>
/// <param name="ToBark">Distance to the outer face under bark, infinite where there is none. [m]</param>
/// <param name="ToEnd">Distance to the nearer end. [m]</param>
internal readonly record struct ProbePoint(int Cell, double Volume, double ToSide, double ToBark, double ToEnd)
{
    /// <summary>Distance to the nearest face of any kind.</summary>
    internal double ToAnyFace => Math.Min(Math.Min(ToSide, ToBark), ToEnd);
}
