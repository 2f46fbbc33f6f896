namespace Rickyard.Core.Racks;

/// <summary>Sizes of a stack, for sharing air, sun and rain among its faces. Per metre of stack length throughout.</summary>
/// <param name="SplitSize">Width of a split across its length: the diameter of a round of like surface. [m]</param>
/// <param name="SplitLength">Length of a split, which is the depth of one row. [m]</param>
/// <param name="Height">Height of the stack; 1.2 m (4 ft) is the height of a cord. [m]</param>
/// <param name="SolidFraction">Wood and bark over stacked volume; 80 ft³ in a cord of 128 ft³ (common practice: 70 to 90 ft³).</param>
public sealed record StackGeometry(double SplitSize, double SplitLength, double Height = 1.2, double SolidFraction = 0.62)
{
    /// <summary>Bark and split faces per stacked volume (physics.md, eq. R4). [m² m⁻³]</summary>
    public double SidesPerVolume => SolidFraction * 4 / SplitSize;

    /// <summary>End grain per stacked volume. [m² m⁻³]</summary>
    public double EndsPerVolume => SolidFraction * 2 / SplitLength;

    /// <summary>All faces per stacked volume. [m² m⁻³]</summary>
    public double FacesPerVolume => SidesPerVolume + EndsPerVolume;

    /// <summary>Share of a section across the flow that is open to the air.</summary>
    public double OpenFraction => 1 - SolidFraction;

    /// <summary>Depth of the stack. [m]</summary>
    public double Depth(int rows) => rows * SplitLength;
}
