namespace Rickyard.Core.Wood;

/// <summary>Density, shrinkage and pore space from basic density (Wood Handbook FPL-GTR-282, ch. 4; physics.md, eq. W1 to W4). Raw doubles.</summary>
public static class WoodDensity
{
    /// <summary>Density of the cell wall: specific gravity 1.54 (eq. 4-3). [kg m⁻³]</summary>
    public const double OfCellWall = 1540;

    /// <summary>Moisture when every lumen is full of water (eq. 4-3). [kg kg⁻¹]</summary>
    /// <param name="basicDensity">Oven-dry mass over green volume. [kg m⁻³]</param>
    public static double MaximumMoisture(double basicDensity) => 1000 * (OfCellWall - basicDensity) / (OfCellWall * basicDensity);

    /// <summary>Shrinkage from green to a moisture content, straight from 30 % to oven-dry (eq. 4-12). [–]</summary>
    /// <param name="totalShrinkage">From green to oven-dry, in one direction or of the volume. [–]</param>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    public static double Shrinkage(double totalShrinkage, double moisture) =>
        totalShrinkage * Math.Max(0, 1 - moisture / FiberSaturation.OfHandbook);

    /// <summary>Total volumetric shrinkage where none is published: 26.5 % of the basic specific gravity (eq. 4-13). [–]</summary>
    /// <param name="basicDensity">Oven-dry mass over green volume. [kg m⁻³]</param>
    public static double UsualVolumetricShrinkage(double basicDensity) => 0.265 * basicDensity / 1000;

    /// <summary>Oven-dry mass over volume at a moisture content (eq. 4-12). [kg m⁻³]</summary>
    /// <param name="basicDensity">Oven-dry mass over green volume. [kg m⁻³]</param>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    /// <param name="totalShrinkage">Of the volume, from green to oven-dry. [–]</param>
    public static double DryMassPerVolume(double basicDensity, double moisture, double totalShrinkage) =>
        basicDensity / (1 - Shrinkage(totalShrinkage, moisture));

    /// <summary>Wood and water over volume at a moisture content (eq. 4-14). [kg m⁻³]</summary>
    /// <param name="basicDensity">Oven-dry mass over green volume. [kg m⁻³]</param>
    /// <param name="moisture">Moisture content. [kg kg⁻¹]</param>
    /// <param name="totalShrinkage">Of the volume, from green to oven-dry. [–]</param>
    public static double At(double basicDensity, double moisture, double totalShrinkage) =>
        DryMassPerVolume(basicDensity, moisture, totalShrinkage) * (1 + moisture);
}
