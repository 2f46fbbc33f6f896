namespace Rickyard.Core.Racks;

/// <summary>By how much a real rack differs from the described one; 1 is as described.</summary>
/// <param name="Wind">Multiple of the air speed between the splits, and so of the air exchange.</param>
/// <param name="Rain">Multiple of the rain that reaches the faces.</param>
/// <param name="Sun">Multiple of the sun absorbed.</param>
public readonly record struct RackFactors(double Wind, double Rain, double Sun)
{
    /// <summary>As described.</summary>
    public static RackFactors AsDescribed { get; } = new(1, 1, 1);
}
